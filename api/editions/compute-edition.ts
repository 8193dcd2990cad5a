/** An edition's results and standings from its evidence. Pure. */
import { computeStandings } from '../measurement/ranking/standings.js';
import type { Standings } from '../measurement/ranking/standings.js';
import { roundHalfEven } from '../measurement/units/round-half-even.js';
import { figuresOfEvidence } from '../submissions/submission-evidence.js';
import type { SubmissionEvidence } from '../submissions/submission-evidence.js';
import type { EditionEvidence } from './edition-evidence.js';
import type { Quantity } from './editions.schemas.js';
import { computeResults } from './results.js';
import type { Result, ResultSubmission } from './results.js';

/** Results by slug of the variant and quantity, and the standings that follow. */
export interface ComputedEdition extends EditionEvidence {
  readonly results: ReadonlyMap<string, ReadonlyMap<Quantity, Result>>;
  readonly standings: Standings;
}

const MEASURING_KINDS = ['loadFrame', 'forceGauge', 'opticalGauge', 'micrometer', 'balance'];

/** The instrument that stands for the rig of a submission. */
export function rigOf({ instruments }: Pick<SubmissionEvidence, 'instruments'>): string {
  const byKind = MEASURING_KINDS.flatMap((kind) => instruments.filter((instrument) => instrument.kind === kind));
  return (byKind[0] ?? instruments[0])?.code ?? 'none';
}

/** Computes results and standings of all entries. */
export function computeEdition(evidence: EditionEvidence): ComputedEdition {
  const results = new Map(evidence.edition.entries.map(({ variant }) => [variant, resultsOf(variant, evidence)]));
  return { ...evidence, results, standings: standingsOf(evidence.edition, results) };
}

function resultsOf(variant: string, { submissions, claims, instruments }: EditionEvidence): Map<Quantity, Result> {
  const claim = claims.find((candidate) => candidate.variant === variant && candidate.quantity === 'breakingForce');
  const own = submissions.filter((submission) => submission.variant === variant);
  return computeResults(
    own.map((submission) => toResultSubmission(submission, instruments)),
    claim ? Number(claim.valueSi) : null,
  );
}

function toResultSubmission(submission: SubmissionEvidence, instruments: EditionEvidence['instruments']): ResultSubmission {
  const rig = rigOf(submission);
  return {
    method: submission.method.slug,
    tester: submission.tester,
    rig,
    figures: figuresOfEvidence(submission),
    calibrationRelative: calibrationOf(submission, rig, instruments),
  };
}

/** Relative standard uncertainty of the certificate that was valid on the bench day [1]: U / k. */
function calibrationOf(submission: SubmissionEvidence, rig: string, instruments: EditionEvidence['instruments']): number {
  const certificate = submission.instruments.find(({ code }) => code === rig)?.certificate;
  const calibration = instruments.find(({ code }) => code === rig)?.calibrations.find((candidate) => candidate.certificate === certificate);
  return calibration ? Number(calibration.expandedUncertaintyPercent) / Number(calibration.coverageFactor) / 100 : 0;
}

function standingsOf({ scheme, entries }: EditionEvidence['edition'], results: ComputedEdition['results']): Standings {
  const { categories, combine, countPlaces, tieBreak } = scheme.rules;
  const valued = entries.map(({ variant, exclusion }) => ({
    id: variant,
    exclusion: exclusion && { effect: exclusion.effect },
    values: Object.fromEntries(
      categories.map(({ code, quantity, places }) => {
        const estimate = results.get(variant)?.get(quantity)?.estimate;
        return [code, estimate ? roundHalfEven(estimate.value, places) : null];
      }),
    ),
  }));
  return computeStandings({ categories, combine, countPlaces, tieBreak, entries: valued });
}
