import type { MethodLimits } from '../contract/endpoints/methods.js';
import type { MethodSeries } from '../contract/method-series.js';
import type { CheckDocument } from '../contract/documents/release-documents.js';
import type { SpecimenInSi } from '../readings/readings-si.js';
import type { SubmissionContent } from '../contract/submission-content.js';
import type { SubmissionFigures } from '../readings/submission-figures.js';
import type { Severity } from './finding.js';

export interface CheckedInstrument {
  readonly code: string;
  readonly kind: string;
  readonly dimension: string;
  /** In the SI unit of its dimension. */
  readonly capacitySi: string;
  readonly resolutionSi: string;
  readonly calibrations: readonly { readonly certificate: string; readonly validFrom: string; readonly validUntil: string }[];
}

export interface CheckedClaim {
  readonly quantity: string;
  readonly valueSi: string;
}

/** Checks as an edition pinned them when it opened; null where it was opened before checks were pinned. */
export type PinnedChecks = readonly CheckDocument[] | null;

/** What a method version sets of its checks: code → severity, and limits by name. What it leaves out stays as pinned. */
export type CheckSettings = Readonly<
  Record<string, { readonly severity?: Severity | undefined; readonly limits?: Readonly<Record<string, number>> | undefined }>
>;

/** Highest force of the trace of a specimen. */
export interface CheckedTrace {
  readonly specimen: number;
  readonly peakForceN: number;
}

/** All that a check may look at; nothing else. */
export interface CheckInput {
  readonly content: SubmissionContent;
  readonly specimens: readonly SpecimenInSi[];
  readonly figures: SubmissionFigures;
  readonly temperatureC: number;
  readonly method: {
    readonly slug: string;
    readonly number: number;
    readonly effectiveFrom: string;
    readonly effectiveUntil: string | null;
    readonly limits: MethodLimits;
    readonly series: readonly MethodSeries[];
    readonly checks: CheckSettings;
  };
  readonly instruments: readonly CheckedInstrument[];
  readonly variant: { readonly material: string; readonly densityGPerCm3: number; readonly claims: readonly CheckedClaim[] };
  /** Cross-section of the variant from earlier diameter submissions [mm²]; null when there are none. */
  readonly knownAreaMm2: number | null;
  readonly hasDeclaredInterest: boolean;
  /** Measured over claimed breaking force of the tester's other lines of the bench day, one for each variant. */
  readonly sameDayRatios: readonly number[];
  /** Mean breaking forces that the tester read of this spool in other submissions, untreated [N]. */
  readonly ownForcesN: readonly number[];
  /** Mean diameter that the tester read of this spool, here or in another submission [mm]; null when there is none. */
  readonly ownDiameterMm: number | null;
  /** How often the tester has handed in this spool by this method, this time included. */
  readonly handIns: number;
  /** Previews of this spool that the tester has looked at. */
  readonly previews: number;
  /** What the tester has read that tells what the spool is, oldest first; none where the testing is blind. */
  readonly keyReadings: readonly ('key' | 'label' | 'results' | 'retest')[];
  /** What is the same as the first time, or otherwise that should be the same, of a spool that is tested again; in words. */
  readonly secondTime: readonly string[];
  /** References of earlier submissions with the very same readings. */
  readonly sameReadingsAs: readonly string[];
  readonly rigEvidence: 'inControl' | 'outOfControl' | 'learning' | 'noEvidence';
  /** Control pulls up to the bench day of the rig that has the fewest. */
  readonly rigPulls: number;
  /** First day of the edition, and the day the spool was obtained. */
  readonly opensOn: string;
  readonly obtainedOn: string;
  /** Traces of the specimens; none while a submission is handed in, they come after. */
  readonly traces?: readonly CheckedTrace[];
  /** Date at the bench now. */
  readonly today: string;
}

/** What comes from a label, a maker, a variant or others' results: a check that looks at any of it speaks to reviewers alone. */
export const SEALED_INPUTS: readonly (keyof CheckInput)[] = [
  'variant',
  'knownAreaMm2',
  'hasDeclaredInterest',
  'sameDayRatios',
  'sameReadingsAs',
  'obtainedOn',
  'previews',
  'secondTime',
];
