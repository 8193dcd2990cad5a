import type { SpecimenInSi } from '../../readings/readings-si.js';
import { computeSubmissionFigures } from '../../readings/submission-figures.js';
import type { AreaRule, SubmissionFigures } from '../../readings/submission-figures.js';

/** An accepted submission as results and releases take it: plain JSON, decimals as text. */
export interface SubmissionEvidence {
  readonly reference: string;
  readonly revision: number;
  /** Slug of the variant that its spool is, as is known now. */
  readonly variant: string;
  /** Blind code. */
  readonly spool: string;
  readonly method: { readonly slug: string; readonly number: number };
  /** How the method version finds the cross-section. */
  readonly areaFrom: AreaRule;
  /** Density of the solid material [g/cm³]. */
  readonly densityGPerCm3: string;
  /** Display names, which no two accounts share. */
  readonly tester: string;
  readonly reviewer: string;
  readonly benchDay: string;
  /** Whether its tester had neither seen the label nor read what tells of the spool. */
  readonly isBlind: boolean;
  readonly instruments: readonly { readonly code: string; readonly kind: string; readonly certificate: string | null }[];
  readonly temperatureC: string;
  readonly humidityPercent: string;
  readonly specimens: readonly SpecimenInSi[];
  readonly findings: readonly { readonly code: string; readonly message: string; readonly resolution: string | null }[];
}

/** Figures of an accepted submission, from the readings of the specimens that count. */
export const figuresOfEvidence = ({ specimens, areaFrom, densityGPerCm3 }: SubmissionEvidence): SubmissionFigures =>
  computeSubmissionFigures(specimens, areaFrom, Number(densityGPerCm3));
