/** An edition's results and standings from its evidence. Pure. */
import { calibrationUncertainty } from '../../measurement/uncertainty/standard-uncertainty.js';
import { computeStandings } from '../../measurement/ranking/places/standings.js';
import type { Standings } from '../../measurement/ranking/places/standings.js';
import { parseQuantity } from '../../measurement/units/parse-quantity.js';
import { roundHalfEven } from '../../measurement/units/round-half-even.js';
import { figuresOfEvidence } from '../evidence/submission-evidence.js';
import type { SubmissionEvidence } from '../evidence/submission-evidence.js';
import type { InstrumentEvidence } from '../evidence/instrument-evidence.js';
import type { ComparedEvidence, EditionEvidence } from '../evidence/edition-evidence.js';
import type { SpreadsEvidence } from '../evidence/effects-evidence.js';
import { knownEffects } from '../rigs/known-effects.js';
import { isEnough, isUnplaced } from '../results/eligibility.js';
import { keyOf, quantitiesOf } from '../results/quantity.js';
import { computeResults } from '../results/results.js';
import type { EditionResults } from '../results/results.js';
import type { ResultSubmission } from '../results/series.js';

/** The evidence of a whole edition with the results that follow. */
export type ComputedResults = EditionEvidence & EditionResults;

/** The same of what is compared, an edition with one division or a division, with its standings. */
export interface ComputedEdition extends ComparedEvidence, EditionResults {
  readonly standings: Standings;
}

const MEASURING_KINDS = ['loadFrame', 'forceGauge', 'opticalGauge', 'micrometer', 'balance'];

/** The instrument that stands for the rig of a submission. */
export function rigOf({ instruments }: Pick<SubmissionEvidence, 'instruments'>): string {
  const byKind = MEASURING_KINDS.flatMap((kind) => instruments.filter((instrument) => instrument.kind === kind));
  return (byKind[0] ?? instruments[0])?.code ?? 'none';
}

/**
 * Computes the results of all entries, over all divisions: rigs and testers pull every kind of line.
 * @param before what the editions before found of rigs, testers and spools
 */
export function computeEdition<Evidence extends EditionEvidence>(evidence: Evidence, before?: SpreadsEvidence): Evidence & EditionResults {
  const { edition, submissions, claims, instruments } = evidence;
  const claimedForceN = new Map(
    claims.filter(({ quantity }) => quantity === 'breakingForce').map(({ variant, valueSi }) => [variant, Number(valueSi)]),
  );
  const found = computeResults(
    edition.entries.map(({ variant }) => variant),
    quantitiesOf(
      (edition.divisions ?? [edition]).flatMap(({ scheme }) => scheme.rules.categories),
      edition.methods,
    ),
    submissions.map((submission) => toResultSubmission(submission, instruments)),
    claimedForceN,
    { effects: knownEffects(evidence, edition.methods), before, retested: retestedIn(evidence) },
  );
  return { ...evidence, ...found };
}

/** Results that were tested again, and what was found: both under the first one's reference in the place of a variant. */
export function retestedIn({ retests, submissions, instruments }: EditionEvidence): ResultSubmission[] {
  return (retests?.drawn ?? []).flatMap(({ original, again }) => {
    const first = submissions.find(({ reference }) => reference === original);
    return first && again ? [first, again].map((one) => ({ ...toResultSubmission(one, instruments), variant: original })) : [];
  });
}

function toResultSubmission(submission: SubmissionEvidence, instruments: EditionEvidence['instruments']): ResultSubmission {
  const { reference, variant, method, tester } = submission;
  const rig = rigOf(submission);
  const instrument = instruments.find(({ code }) => code === rig);
  return {
    reference,
    variant,
    method: method.slug,
    tester,
    rig,
    figures: figuresOfEvidence(submission),
    calibration: calibrationOf(submission, instrument),
    resolution: instrument ? resolutionOf(instrument) : null,
  };
}

/** The certificate that was valid on the bench day, with its relative standard uncertainty: U / k. */
function calibrationOf(submission: SubmissionEvidence, instrument: InstrumentEvidence | undefined): ResultSubmission['calibration'] {
  const named = submission.instruments.find(({ code }) => code === instrument?.code)?.certificate;
  const calibration = instrument?.calibrations.find(({ certificate }) => certificate === named);
  if (!calibration) return null;
  const { certificate, expandedUncertaintyPercent, coverageFactor } = calibration;
  return { certificate, relative: calibrationUncertainty(Number(expandedUncertaintyPercent), Number(coverageFactor)) / 100 };
}

/** Step of the display in the unit of its figures: N of a force, mm of a length. */
function resolutionOf({ resolution }: InstrumentEvidence): number | null {
  const { si, siUnit } = parseQuantity(resolution.text, resolution.unit);
  return siUnit === 'N' ? Number(si) : siUnit === 'm' ? 1000 * Number(si) : null;
}

/** Standings of the entries under their scheme. */
export function standingsOf({ edition: { scheme, entries }, results, fits }: ComparedEvidence & EditionResults): Standings {
  const { combine, countPlaces, tieBreak } = scheme.rules;
  const categories = scheme.rules.categories.map((category) => ({ ...category, isUnplaced: isUnplaced(category, { results, fits }) }));
  const valued = entries.map(({ variant, exclusion }) => ({
    id: variant,
    exclusion: exclusion && { effect: exclusion.effect },
    values: Object.fromEntries(
      categories.map((category) => {
        const estimate = results.get(variant)?.get(keyOf(category))?.estimate;
        const counts = estimate && isEnough(category, variant, { results, fits });
        return [category.code, counts ? roundHalfEven(estimate.value, category.places) : null];
      }),
    ),
  }));
  return computeStandings({ categories, combine, countPlaces, tieBreak, entries: valued });
}
