/** The results of an edition: each variant's estimates from its accepted submissions. Pure. */
import { mean } from '../../measurement/summary/mean.js';
import type { ModelEvidence, ModelSeries } from '../../measurement/ranking/model-evidence.js';
import { besideTable } from '../../measurement/ranking/beside-table.js';
import type { Tail } from '../../measurement/bench-model/tail.js';
import { modelProduct } from '../../measurement/ranking/model-product.js';
import type { EffectsEvidence, SpreadsEvidence } from '../evidence/effects-evidence.js';
import { bareEstimate, estimateOf } from './estimate.js';
import type { Estimate } from './estimate.js';
import { measure } from './measured.js';
import type { BetweenSubmissions, MeasuredQuantity } from './measured.js';
import { diameterOf, forceOf, keyOf } from './quantity.js';
import type { EditionQuantity } from './quantity.js';
import { editionSeries } from './series.js';
import type { EditionSeries, ResultSubmission } from './series.js';

export interface Result {
  readonly of: EditionQuantity;
  /** In the quantity's SI unit of the scheme: MPa, N, %, mm, tex. */
  readonly estimate: Estimate;
  /** What the ranking model takes; null where an uncertainty cannot be stated. */
  readonly evidence: ModelEvidence | null;
  /** Spread of a specimen as found in its submissions, one value each [%]; null for a single specimen. */
  readonly ownCvPercents: readonly (number | null)[];
  readonly specimens: number;
  readonly submissions: number;
  readonly testers: number;
  readonly rigs: number;
  readonly note: string | null;
  /** References of the submissions that it was computed from, all of them. */
  readonly references: readonly string[];
}

export interface EditionResults {
  /** What was computed, in the order in which it is listed. */
  readonly quantities: readonly EditionQuantity[];
  /** Slug of the variant → key of the quantity → result. */
  readonly results: ReadonlyMap<string, ReadonlyMap<string, Result>>;
  /** Key of the quantity → slug of the variant → how well its value is known beside the others: relative standard uncertainty and degrees of freedom. */
  readonly besideTable: ReadonlyMap<string, ReadonlyMap<string, Tail>>;
  /** Key of a measured quantity → what the model of the bench found. */
  readonly fits: ModelSeries;
  /** Key of a measured quantity → what a specimen scatters by in general [%], and what submissions differ by beyond that. */
  readonly spreads: ReadonlyMap<string, { readonly typicalCvPercent: number | null; readonly between: BetweenSubmissions }>;
}

interface Found {
  readonly value: number;
  readonly evidence: ModelEvidence | null;
  readonly from: readonly ResultSubmission[];
  /** Submissions of another quantity that it leans on: diameters, where force is put over the section. */
  readonly also?: readonly ResultSubmission[];
}

/** What is known of rigs, testers and spools from elsewhere than the submissions. */
export interface Elsewhere {
  readonly effects?: EffectsEvidence;
  /** What the editions before found. */
  readonly before?: SpreadsEvidence | undefined;
  /** Results that were tested again, and what was found: both under the first one's reference in the place of a variant. */
  readonly retested?: readonly ResultSubmission[];
}

interface OverTheEdition {
  readonly series: readonly EditionSeries[];
  readonly measured: MeasuredQuantity;
}

const ABOVE_WHOLE = 'Above 100 %: reported as found; straight and treated pulls scatter.';
const APART = 'Its submissions disagree beyond those of the others: the interval is the wider for it.';

/**
 * Computes the quantities of all variants at once: they learn their spread from one another.
 * @param variants slugs of the entries
 * @param claimedForceN slug → rated strength on the label [N]
 * @param elsewhere what is known of rigs, testers and spools besides
 */
export function computeResults(
  variants: readonly string[],
  quantities: readonly EditionQuantity[],
  submissions: readonly ResultSubmission[],
  claimedForceN: ReadonlyMap<string, number>,
  elsewhere: Elsewhere = {},
): EditionResults {
  const direct = new Map(
    quantities.filter(({ parts }) => parts.length > 0).map((one) => [one.key, overTheEdition(one, submissions, elsewhere)] as const),
  );
  const fits = Object.fromEntries([...direct].flatMap(([key, { measured }]) => (measured.fit ? [[key, measured.fit] as const] : [])));
  const ofVariant = (variant: string): ReadonlyMap<string, Result> => {
    const measured = (key: string) => foundIn(direct.get(key)?.measured, variant);
    return new Map(
      quantities.flatMap((quantity) => {
        const found = derived(quantity, measured, claimedForceN.get(variant));
        return found ? [[quantity.key, toResult(quantity, found, direct.get(measuredKeyOf(quantity))?.series ?? [], fits)] as const] : [];
      }),
    );
  };
  const results = new Map(variants.map((variant) => [variant, ofVariant(variant)]));
  return {
    quantities,
    results,
    besideTable: new Map(quantities.map(({ key }) => [key, besideTableOf(key, results, fits)])),
    fits,
    spreads: new Map(
      [...direct].map(
        ([
          key,
          {
            series,
            measured: { between },
          },
        ]) => [key, { typicalCvPercent: series.at(-1)?.typicalCvPercent ?? null, between }],
      ),
    ),
  };
}

function besideTableOf(key: string, results: EditionResults['results'], fits: ModelSeries): ReadonlyMap<string, Tail> {
  const known = [...results].flatMap(([variant, own]) => {
    const evidence = own.get(key)?.evidence;
    return evidence ? [{ variant, evidence }] : [];
  });
  const tails = besideTable(
    known.map(({ evidence }) => evidence),
    fits,
  );
  return new Map(known.flatMap(({ variant }, i) => (tails[i] ? [[variant, tails[i]] as const] : [])));
}

function overTheEdition(
  quantity: EditionQuantity,
  submissions: readonly ResultSubmission[],
  { effects, before, retested = [] }: Elsewhere,
): OverTheEdition {
  const seriesOf = (all: readonly ResultSubmission[]) => quantity.parts.map((part) => editionSeries(part, all));
  const series = seriesOf(submissions);
  const beside = { effects: effects?.[quantity.key], before: before?.[quantity.key], retested: seriesOf(retested) };
  return { series, measured: measure(quantity, series, beside) };
}

/** Key of the measured quantity that a quantity scatters as: a stress or an honesty as the force that it is made of. */
export const measuredKeyOf = (quantity: EditionQuantity): string => (quantity.parts.length > 0 ? quantity.key : keyOf(forceOf(quantity)));

function foundIn(measured: MeasuredQuantity | undefined, variant: string): Found | null {
  const own = measured?.variants.get(variant);
  if (!own) return null;
  const value = own.evidence?.value ?? mean(own.points.map((point) => point.value));
  return { value, evidence: own.evidence, from: own.points.map(({ submission }) => submission) };
}

function derived(quantity: EditionQuantity, measured: (key: string) => Found | null, claimedN: number | undefined): Found | null {
  if (quantity.quantity === 'strengthHonesty') return honestyOf(measured(keyOf(forceOf(quantity))), claimedN);
  const diameter = diameterOf(quantity);
  return diameter ? stressOf(measured(keyOf(forceOf(quantity))), measured(keyOf(diameter))) : measured(quantity.key);
}

/** Force over the measured cross-section; the section's relative uncertainty is twice the diameter's. */
function stressOf(force: Found | null, diameter: Found | null): Found | null {
  const areas = (diameter?.from ?? []).flatMap(({ figures }) => figures.areaMm2 ?? []);
  if (!force || !diameter || areas.length === 0) return null;
  // What the method's rule makes of the section, against the square of the diameter: π/4 for a circle.
  const shape = mean(areas) / diameter.value ** 2;
  const value = force.value / (shape * diameter.value ** 2);
  const whence = { from: force.from, also: diameter.from };
  if (!force.evidence || !diameter.evidence) return { value, evidence: null, ...whence };
  const factors = [
    { evidence: force.evidence, power: 1 },
    { evidence: diameter.evidence, power: -2 },
  ];
  return { value, evidence: modelProduct(factors, 1 / shape), ...whence };
}

function honestyOf(force: Found | null, claimedN: number | undefined): Found | null {
  if (!force || claimedN === undefined) return null;
  const evidence = force.evidence && modelProduct([{ evidence: force.evidence, power: 1 }], 100 / claimedN);
  return { value: (100 * force.value) / claimedN, evidence, from: force.from };
}

function toResult(
  of: EditionQuantity,
  { value, evidence, from, also = [] }: Found,
  series: readonly EditionSeries[],
  fits: ModelSeries,
): Result {
  const estimate = evidence ? estimateOf(evidence, fits) : bareEstimate(value);
  const means = series.map((one) => one.means);
  const notes = [...(of.quantity === 'retention' && value > 100 ? [ABOVE_WHOLE] : []), ...(estimate.isApart ? [APART] : [])];
  return {
    of,
    estimate,
    evidence,
    ownCvPercents: from.map(({ reference }) => means.at(-1)?.get(reference)?.ownCvPercent ?? null),
    specimens: from.reduce((sum, { reference }) => sum + means.reduce((own, one) => own + (one.get(reference)?.n ?? 0), 0), 0),
    submissions: from.length,
    testers: new Set(from.map(({ tester }) => tester)).size,
    rigs: new Set(from.map(({ rig }) => rig)).size,
    note: notes.length > 0 ? notes.join(' ') : null,
    references: [...from, ...also].map(({ reference }) => reference),
  };
}
