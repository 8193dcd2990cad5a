/** What is measured of a variant directly: means of its submissions, and what the model of the bench makes of them over the whole edition. Pure. */
import type { BenchSubmission, SeasonTold, ToldSpread } from '../../measurement/bench-model/bench-series.js';
import { contrastsOf, designOf } from '../../measurement/bench-model/design.js';
import { effectsOf, spreadsOf } from '../../measurement/bench-model/effects-of.js';
import type { FoundEffect } from '../../measurement/bench-model/effects-of.js';
import { FEWEST_CONTRASTS, fitSeries } from '../../measurement/bench-model/fit-series.js';
import type { FittedSeries, ValuesOnly } from '../../measurement/bench-model/fit-series.js';
import { seasonTells } from '../../measurement/bench-model/spread-atoms.js';
import type { ModelEvidence } from '../../measurement/ranking/model-evidence.js';
import { ratioVariance } from '../../measurement/uncertainty/ratio-variance.js';
import type { QuantityKind } from '../../contract/endpoints/schemes.js';
import type { CauseEffects, SpreadsEvidence } from '../evidence/effects-evidence.js';
import type { EditionQuantity } from './quantity.js';
import type { EditionSeries, ResultSubmission } from './series.js';

/** A quantity that is a mean of a series, or the ratio of two. */
export type Measured = Pick<EditionQuantity, 'key' | 'quantity' | 'parts' | 'reproducibility'>;

/** A ratio of two pulls on one rig: its calibration and its own effect cancel. */
const isRatio = ({ parts }: Measured): boolean => parts.length === 2;
/** Figures that the certificate of the instrument speaks of. */
const CALIBRATED: readonly QuantityKind[] = ['breakingForce', 'diameter'];

interface Point {
  readonly submission: ResultSubmission;
  readonly value: number;
  /** Relative variance from repeatability with its degrees of freedom; null where it cannot be stated. */
  readonly relative: { readonly variance: number; readonly degreesOfFreedom: number } | null;
}

/** What submissions of one variant differ by beyond repeatability, as relative standard deviation [%]. */
export interface BetweenSubmissions {
  readonly relativePercent: number;
  readonly degreesOfFreedom: number;
}

/** What is known of rigs, testers and spools from elsewhere than the submissions of the edition. */
export interface KnownBeside {
  readonly effects?: CauseEffects | undefined;
  /** What the editions before found. */
  readonly before?: SpreadsEvidence[string] | undefined;
  /** Series of results that were tested again: both under the first one's reference in the place of a variant. */
  readonly retested?: readonly EditionSeries[];
}

export interface MeasuredQuantity {
  readonly between: BetweenSubmissions;
  /** Null where no submission has a stated repeatability. */
  readonly fit: FittedSeries | ValuesOnly | null;
  /** Slug of the variant → its submissions, and their evidence; null where an uncertainty cannot be stated. */
  readonly variants: ReadonlyMap<string, { readonly points: readonly Point[]; readonly evidence: ModelEvidence | null }>;
}

/**
 * Evidence of every variant, all fitted together: effects of rigs and testers are taken out, what is left of them stays in the uncertainty.
 * @param beside what is known from elsewhere; it enters with its own weight
 */
export function measure(
  measured: Measured,
  series: readonly EditionSeries[],
  { effects = {}, before = [], retested = [] }: KnownBeside,
): MeasuredQuantity {
  const byVariant = Map.groupBy(pointsOf(series), ({ submission }) => submission.variant);
  const stated = [...byVariant].filter(([, own]) => own.every(({ relative }) => relative));
  const submissions = stated.flatMap(([variant, own]) => own.flatMap((point) => toBenchSubmission(measured, variant, point)));
  const fit =
    submissions.length === 0
      ? null
      : fitSeries({
          submissions,
          reproducibility: measured.reproducibility,
          told: toldSpreads(effects, isRatio(measured)),
          earlier: [...before.map(asNumbers), ...toldByRetests(measured, retested)],
        });
  const found = fit?.kind === 'fitted' ? effectsOf(fit) : [];
  const known = new Set(stated.map(([variant]) => variant));
  return {
    between: betweenOf(fit, submissions.length - stated.length),
    fit,
    variants: new Map(
      [...byVariant].map(([variant, own]) => [
        variant,
        { points: own, evidence: fit?.kind === 'fitted' && known.has(variant) ? evidenceOf(measured, variant, own, fit, found) : null },
      ]),
    ),
  };
}

function pointsOf([first, second]: readonly EditionSeries[]): Point[] {
  return [...(first?.means.values() ?? [])].flatMap(({ submission, mean, relative }) => {
    if (second === undefined) return { submission, value: mean, relative };
    const treated = second.means.get(submission.reference);
    if (!treated) return [];
    const both = relative && treated.relative && ratioVariance(treated.relative, relative);
    return { submission, value: (100 * treated.mean) / mean, relative: both };
  });
}

function toBenchSubmission(measured: Measured, variant: string, { submission, value, relative }: Point): BenchSubmission[] {
  const { rig, tester, calibration } = submission;
  const isCalibrated = calibration !== null && !isRatio(measured) && CALIBRATED.includes(measured.quantity);
  if (!relative) return [];
  return [
    {
      variant,
      value,
      relativeVariance: relative.variance,
      degreesOfFreedom: relative.degreesOfFreedom,
      rig: isRatio(measured) ? null : rig,
      tester,
      certificates: isCalibrated ? [{ name: calibration.certificate, relativeStandardUncertainty: calibration.relative }] : [],
    },
  ];
}

const toldSpreads = ({ rig, tester }: CauseEffects, rigCancels: boolean): ToldSpread[] => [
  ...(rig && !rigCancels ? [{ cause: 'rig' as const, relativeSd: Number(rig.relativeSd), degreesOfFreedom: rig.degreesOfFreedom }] : []),
  ...(tester ? [{ cause: 'tester' as const, relativeSd: Number(tester.relativeSd), degreesOfFreedom: tester.degreesOfFreedom }] : []),
];

/** A result and its like from the same spool differ by what rigs and testers add; of spools they tell nothing. */
function toldByRetests(measured: Measured, retested: readonly EditionSeries[]): SeasonTold[] {
  const design = designOf({
    submissions: pointsOf(retested).flatMap((point) => toBenchSubmission(measured, point.submission.variant, point)),
  });
  // Where the method states nothing, as many are needed as of second submissions.
  if (contrastsOf(design) < (measured.reproducibility === null ? FEWEST_CONTRASTS : 1)) return [];
  const told = seasonTells(design, measured.reproducibility, new Uint8Array(design.variants.length));
  return told.filter(({ cause }) => cause !== 'submission');
}

const asNumbers = ({ cause, points }: SpreadsEvidence[string][number]): SeasonTold => ({
  cause,
  points: points.map(({ relativeSd, likelihood }) => ({ relativeSd: Number(relativeSd), likelihood: Number(likelihood) })),
});

function betweenOf(fit: MeasuredQuantity['fit'], degreesOfFreedom: number): BetweenSubmissions {
  const variance = fit?.kind === 'fitted' ? spreadsOf(fit).reduce((sum, { relativeSd }) => sum + relativeSd ** 2, 0) : 0;
  return { relativePercent: 100 * Math.sqrt(variance), degreesOfFreedom };
}

function evidenceOf(
  { key }: Measured,
  variant: string,
  own: readonly Point[],
  fit: FittedSeries,
  effects: readonly FoundEffect[],
): ModelEvidence {
  const parties = [...new Set(own.flatMap(({ submission }) => partiesOf(submission)))].sort();
  return {
    value: fit.values[fit.design.variants.indexOf(variant)] ?? 0,
    factors: [{ series: key, variant, power: 1 }],
    without: Object.fromEntries(parties.map((party) => [party, valueWithout(own, party, effects)])),
  };
}

const partiesOf = ({ tester, rig }: ResultSubmission): string[] => [`tester:${tester}`, `rig:${rig}`];

/** Mean of the submissions that are left without a party, effects taken out; null when none is left. */
function valueWithout(own: readonly Point[], party: string, effects: readonly FoundEffect[]): number | null {
  const left = own.filter(({ submission }) => !partiesOf(submission).includes(party));
  const effectOn = (submission: ResultSubmission): number =>
    effects.reduce((sum, { kind, name, effect }) => (partiesOf(submission).includes(`${kind}:${name}`) ? sum + effect : sum), 0);
  const weights = left.map(({ relative }) => 1 / (relative?.variance ?? 1));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const sum = left.reduce((all, { submission, value }, i) => all + ((weights[i] ?? 0) * value) / (1 + effectOn(submission)), 0);
  return left.length === 0 ? null : sum / total;
}
