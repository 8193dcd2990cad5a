/** What can be computed from the series of methods, and what it is made of. Pure. */
import { untreatedOf, isTreated } from '../../readings/series-needs.js';
import type { MethodSeries } from '../../contract/method-series.js';
import { QUANTITIES } from '../../contract/endpoints/schemes.js';
import type { QuantityKind, SchemeCategory } from '../../contract/endpoints/schemes.js';

/** A version that an edition pinned, with what it yields. */
export interface PinnedMethod {
  readonly slug: string;
  readonly number: number;
  readonly series: readonly MethodSeries[];
  /** What the version states that other rigs, testers and days differ by [%]; absent or null where it states nothing. */
  readonly reproducibilityPercent?: number | null;
}

/** A quantity by the series that it is computed from: what a category of a scheme names. */
export type QuantityNamed = Pick<SchemeCategory, 'quantity' | 'method' | 'series' | 'section'>;

/** A row of readings that a mean is taken of. */
export interface SeriesPart {
  readonly method: string;
  readonly series: MethodSeries;
  readonly figure: 'mean' | 'outOfRoundness';
}

export interface EditionQuantity extends QuantityNamed {
  /** Text that results, records and documents hold it by, the same from edition to edition. */
  readonly key: string;
  /** In words: "Knot retention, Palomar". */
  readonly name: string;
  /** Series whose mean it is, or the ratio of the second to the first; none of what is derived from other quantities. */
  readonly parts: readonly SeriesPart[];
  /** What its method states that results of other rigs, testers and days differ by, relative [1]; null where it states nothing. */
  readonly reproducibility: number | null;
}

/** "retention/fg-knot/knotted"; a stress names the diameters that it is taken over as well. */
export const keyOf = ({ quantity, method, series, section }: QuantityNamed): string =>
  [quantity, method, series, ...(section ? [section.method, section.series] : [])].join('/');

/** Force that a stress or an honesty is computed from, and the diameter of a stress. */
export const forceOf = ({ method, series }: QuantityNamed): QuantityNamed => ({ quantity: 'breakingForce', method, series, section: null });
export const diameterOf = ({ section }: QuantityNamed): QuantityNamed | null =>
  section && { quantity: 'diameter', ...section, section: null };

const DERIVED: readonly QuantityKind[] = ['apparentStress', 'strengthHonesty'];

/**
 * Every quantity of an edition: what its categories name, what that is computed from, and what else its methods yield; by kind, what
 * the scheme names first.
 */
export function quantitiesOf(categories: readonly SchemeCategory[], methods: readonly PinnedMethod[]): EditionQuantity[] {
  const ranked = categories.flatMap((category) => {
    const { quantity, method, series, section } = category;
    const behind = DERIVED.includes(quantity) ? [forceOf(category), diameterOf(category) ?? []].flat() : [];
    return [{ quantity, method, series, section }, ...behind];
  });
  const byKey = Map.groupBy([...ranked, ...methods.flatMap(yieldOf)], keyOf);
  const all = [...byKey.values()].flatMap((same) => same.slice(0, 1)).flatMap((one) => inEdition(one, methods));
  return all.sort((one, other) => QUANTITIES.indexOf(one.quantity) - QUANTITIES.indexOf(other.quantity));
}

/** What one submission of a method shows by itself: the untreated pulls that treated ones are compared with, too. */
export const quantitiesIn = (method: PinnedMethod): EditionQuantity[] =>
  method.series.flatMap((series) => kindsOf(series, method).flatMap((quantity) => inEdition(named(quantity, method, series), [method])));

/** What a method yields to an edition. Untreated pulls that treated ones are compared with are no result of their own. */
function yieldOf(method: PinnedMethod): QuantityNamed[] {
  const isCompared = method.series.some(isTreated);
  const own = method.series.filter((series) => !(isCompared && series === untreatedOf(method.series)));
  return own.flatMap((series) => kindsOf(series, method).map((quantity) => named(quantity, method, series)));
}

const named = (quantity: QuantityKind, { slug: method }: PinnedMethod, { code: series }: MethodSeries): QuantityNamed => ({
  quantity,
  method,
  series,
  section: null,
});

function kindsOf(series: MethodSeries, method: PinnedMethod): QuantityKind[] {
  if (series.kind === 'diameterAlongStations') return ['diameter', 'outOfRoundness'];
  if (series.kind === 'linearDensity') return ['linearDensity'];
  return isTreated(series) && untreatedOf(method.series) ? ['retention'] : ['breakingForce'];
}

/** A quantity with its parts and words; none where no pinned version yields its series. */
function inEdition(one: QuantityNamed, methods: readonly PinnedMethod[]): EditionQuantity[] {
  const method = methods.find(({ slug }) => slug === one.method);
  const list = method?.series ?? [];
  const percent = method?.reproducibilityPercent ?? null;
  const series = list.find(({ code }) => code === one.series);
  const parts = series && partsOf(one, series, list);
  return parts
    ? [{ ...one, key: keyOf(one), name: nameOf(one.quantity, series), parts, reproducibility: percent === null ? null : percent / 100 }]
    : [];
}

function partsOf({ quantity, method }: QuantityNamed, series: MethodSeries, list: readonly MethodSeries[]): SeriesPart[] | null {
  if (DERIVED.includes(quantity)) return [];
  const part: SeriesPart = { method, series, figure: quantity === 'outOfRoundness' ? 'outOfRoundness' : 'mean' };
  if (quantity !== 'retention') return [part];
  const untreated = untreatedOf(list);
  return untreated && isTreated(series) ? [{ ...part, series: untreated }, part] : null;
}

const NAMES: Readonly<Record<QuantityKind, string>> = {
  breakingForce: 'Breaking force',
  diameter: 'Diameter',
  outOfRoundness: 'Out-of-roundness',
  linearDensity: 'Linear density',
  apparentStress: 'Apparent breaking stress',
  retention: 'Retention',
  strengthHonesty: 'Measured of claimed strength',
};
const RETENTIONS = { knot: 'Knot retention', abrasion: 'Abrasion retention' } as const;

function nameOf(quantity: QuantityKind, series: MethodSeries): string {
  const treatment = series.kind === 'breakingForce' ? series.treatment : null;
  const name = quantity === 'retention' && treatment ? RETENTIONS[treatment.kind] : NAMES[quantity];
  return treatment ? `${name}, ${treatment.name}` : name;
}

/** The quantity of a kind that stands for the line as it comes from the spool: the scheme's own, where it names one. */
export const plainQuantity = (quantities: readonly EditionQuantity[], kind: string): EditionQuantity | undefined =>
  quantities.find(({ quantity, parts }) => quantity === kind && !parts.some(({ series }) => isTreated(series)));
