/** The results of an edition: each variant's estimates from its accepted submissions. Pure. */
import { mean } from '../../measurement/summary/mean.js';
import type { Evidence, SharedSource } from '../../measurement/ranking/evidence.js';
import { productOfEvidence } from '../../measurement/ranking/product-of-evidence.js';
import type { Quantity } from '../../contract/endpoints/editions.js';
import type { EffectsEvidence } from '../evidence/effects-evidence.js';
import { bareEstimate, estimateOf } from './estimate.js';
import type { Estimate } from './estimate.js';
import { MADE_OF, measure } from './measured.js';
import type { BetweenSubmissions, Measured } from './measured.js';
import { editionSeries } from './series.js';
import type { EditionSeries, ResultSubmission, Series } from './series.js';

export interface Result {
  readonly quantity: Quantity;
  /** In the quantity's SI unit of the scheme: MPa, N, %, mm, tex. */
  readonly estimate: Estimate;
  /** What the ranking model takes; null where an uncertainty cannot be stated. */
  readonly evidence: Evidence | null;
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
  /** Slug of the variant → quantity → result. */
  readonly results: ReadonlyMap<string, ReadonlyMap<Quantity, Result>>;
  /** What results share with one another. */
  readonly sources: Readonly<Record<string, SharedSource>>;
  /** What a specimen scatters by in general [%], and what submissions differ by beyond that. */
  readonly spreads: Readonly<Record<Measured, { readonly typicalCvPercent: number | null; readonly between: BetweenSubmissions }>>;
}

interface Found {
  readonly value: number;
  readonly evidence: Evidence | null;
  readonly from: readonly ResultSubmission[];
  /** Submissions of another quantity that it leans on: diameters, where force is put over the section. */
  readonly also?: readonly ResultSubmission[];
}

/** In the order in which a bundle lists them. */
const DIRECT: readonly Measured[] = ['breakingForce', 'diameter', 'outOfRoundness', 'linearDensity'];
const RATIOS: readonly Measured[] = ['knotRetention', 'abrasionRetention'];
const ABOVE_WHOLE = 'Above 100 %: reported as found; straight and treated pulls scatter.';

/**
 * Computes every quantity that the accepted submissions allow, of all variants at once: they learn their spread from one another.
 * @param variants slugs of the entries
 * @param claimedForceN slug → rated strength on the label [N]
 * @param effects what is known of rigs and testers from elsewhere
 */
export function computeResults(
  variants: readonly string[],
  submissions: readonly ResultSubmission[],
  claimedForceN: ReadonlyMap<string, number>,
  effects: EffectsEvidence = {},
): EditionResults {
  const series = Object.fromEntries(
    [...new Set(Object.values(MADE_OF).flat())].map((name) => [name, editionSeries(name, submissions)]),
  ) as Record<Series, EditionSeries>;
  const measured = Object.fromEntries(
    [...DIRECT, ...RATIOS].map((name) => [name, measure(name, series, effects[name])] as const),
  ) as Record<Measured, ReturnType<typeof measure>>;
  const sources = Object.assign({}, ...Object.values(measured).map((one) => one.sources)) as Record<string, SharedSource>;
  const foundIn = (name: Measured, variant: string): Found | null => {
    const own = measured[name].variants.get(variant);
    if (!own) return null;
    const value = own.evidence?.value ?? mean(own.points.map((point) => point.value));
    return { value, evidence: own.evidence, from: own.points.map(({ submission }) => submission) };
  };
  const ofVariant = (variant: string): Map<Quantity, Result> => {
    const force = foundIn('breakingForce', variant);
    const found: [Quantity, Found | null][] = [
      ...DIRECT.map((name): [Quantity, Found | null] => [name, foundIn(name, variant)]),
      ['apparentStress', stressOf(force, foundIn('diameter', variant))],
      ...RATIOS.map((name): [Quantity, Found | null] => [name, foundIn(name, variant)]),
      ['strengthHonesty', honestyOf(force, claimedForceN.get(variant))],
    ];
    return new Map(found.flatMap(([quantity, one]) => (one ? [[quantity, toResult(quantity, one, series, sources)] as const] : [])));
  };
  return {
    results: new Map(variants.map((variant) => [variant, ofVariant(variant)])),
    sources,
    spreads: Object.fromEntries(
      [...DIRECT, ...RATIOS].map((name) => [
        name,
        { typicalCvPercent: series[MADE_OF[name].at(-1) ?? 'straightPull'].typicalCvPercent, between: measured[name].between },
      ]),
    ) as EditionResults['spreads'],
  };
}

/** Force over the measured cross-section; the section's relative uncertainty is twice the diameter's. */
function stressOf(force: Found | null, diameter: Found | null): Found | null {
  const areas = [...(force?.from ?? []), ...(diameter?.from ?? [])].flatMap(({ figures }) => figures.areaMm2 ?? []);
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
  return { value, evidence: productOfEvidence(factors, 1 / shape), ...whence };
}

function honestyOf(force: Found | null, claimedN: number | undefined): Found | null {
  if (!force || claimedN === undefined) return null;
  const evidence = force.evidence && productOfEvidence([{ evidence: force.evidence, power: 1 }], 100 / claimedN);
  return { value: (100 * force.value) / claimedN, evidence, from: force.from };
}

const seriesOf = (quantity: Quantity): readonly Series[] =>
  quantity === 'apparentStress' || quantity === 'strengthHonesty' ? MADE_OF.breakingForce : MADE_OF[quantity];

function toResult(
  quantity: Quantity,
  { value, evidence, from, also = [] }: Found,
  series: Readonly<Record<Series, EditionSeries>>,
  sources: EditionResults['sources'],
): Result {
  const estimate = evidence ? estimateOf(evidence, sources) : bareEstimate(value);
  const means = seriesOf(quantity).map((name) => series[name].means);
  const isRetention = quantity === 'knotRetention' || quantity === 'abrasionRetention';
  return {
    quantity,
    estimate,
    evidence,
    ownCvPercents: from.map(({ reference }) => means.at(-1)?.get(reference)?.ownCvPercent ?? null),
    specimens: from.reduce((sum, { reference }) => sum + means.reduce((own, one) => own + (one.get(reference)?.n ?? 0), 0), 0),
    submissions: from.length,
    testers: new Set(from.map(({ tester }) => tester)).size,
    rigs: new Set(from.map(({ rig }) => rig)).size,
    note: isRetention && value > 100 ? ABOVE_WHOLE : null,
    references: [...from, ...also].map(({ reference }) => reference),
  };
}
