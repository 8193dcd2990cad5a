import type { MethodSeries } from '../../../../api/contract/method-series.js';
import type { MethodVersion } from '../../../../api/contract/endpoints/methods.js';
import type { SchemeCategory, SchemeRequest } from '../../../../api/contract/endpoints/schemes.js';
import { toSlug } from '../words/to-slug.js';

export type Yielding = Pick<MethodVersion, 'slug' | 'name' | 'series' | 'parameters'>;
type Pulled = Extract<MethodSeries, { kind: 'breakingForce' }>;

const SHARE = {
  section: null,
  unit: '%',
  places: 1,
  tradeUnit: null,
  tradePlaces: null,
  direction: 'more',
  weight: '1',
  minimum: { specimens: 5, testers: 1, rigs: 1 },
} as const;
const STRESS = { unit: 'MPa', places: 0, tradeUnit: 'psi', tradePlaces: 0 } as const;
const LEFT_BY = { knot: 'Knot retention', abrasion: 'Abrasion retention' } as const;

/** What a house can rank: the categories that versions of its methods yield, whatever the methods are called. */
export function categoryChoices(versions: readonly Yielding[]): SchemeCategory[] {
  const all = versions.flatMap((version) => {
    const untreated = pulled(version).find(({ treatment }) => treatment === null);
    if (!untreated) return [];
    const treated = pulled(version).flatMap(({ code, treatment }) => (treatment ? [{ code, treatment }] : []));
    return treated.length > 0 ? retentions(version, treated) : strengths(version, untreated, versions.flatMap(sections));
  });
  return withOwnNames(all, versions);
}

const pulled = ({ series }: Yielding): Pulled[] => series.filter((one) => one.kind === 'breakingForce');

const retentions = ({ slug }: Yielding, treated: readonly { code: string; treatment: NonNullable<Pulled['treatment']> }[]) =>
  treated.map(({ code, treatment: { kind, name, words } }): SchemeCategory => {
    const own = `${LEFT_BY[kind]}, ${name}`;
    return { ...SHARE, code: toSlug(own), name: own, quantity: 'retention', method: slug, series: code, conditions: words };
  });

const strengths = ({ slug: method }: Yielding, { code: series }: Pulled, over: readonly NonNullable<SchemeCategory['section']>[]) => [
  ...over.map((section): SchemeCategory => ({
    ...SHARE,
    ...STRESS,
    code: 'breaking-stress',
    name: 'Breaking stress',
    quantity: 'apparentStress',
    method,
    series,
    section,
    conditions: 'Straight pull, over the measured cross-section',
  })),
  {
    ...SHARE,
    code: 'strength-against-the-label',
    name: 'Strength against the label',
    quantity: 'strengthHonesty',
    method,
    series,
    conditions: 'Measured over claimed breaking force',
  } satisfies SchemeCategory,
];

/** Series of diameters that make a cross-section; the solid one follows from mass and length as well. */
const sections = ({ slug, series, parameters: { areaFrom } }: Yielding): NonNullable<SchemeCategory['section']>[] =>
  areaFrom === null || (areaFrom === 'solid' && !series.some(({ kind }) => kind === 'linearDensity'))
    ? []
    : series.flatMap(({ kind, code }) => (kind === 'diameterAlongStations' ? [{ method: slug, series: code }] : []));

/** What several methods yield under one name is told apart by the names of these. */
function withOwnNames(all: readonly SchemeCategory[], versions: readonly Yielding[]): SchemeCategory[] {
  const named = (slug: string) => versions.find((version) => version.slug === slug)?.name ?? slug;
  return all.map((category) => {
    if (all.filter(({ code }) => code === category.code).length === 1) return category;
    const behind = [category.method, ...(category.section ? [category.section.method] : [])].map(named);
    const name = [category.name, ...behind].join(', ');
    return { ...category, name, code: toSlug(name) };
  });
}

/** A scheme that adds the places of its categories; the lowest sum comes first. */
export const schemeFrom = (slug: string, name: string, categories: SchemeCategory[]): SchemeRequest => ({
  slug,
  number: 1,
  name,
  words: `The places in ${categories.length} categories are added; the lowest sum comes first. Ties stand.`,
  rules: { combine: 'sumOfPlaces', countPlaces: 'beforeExclusions', tieBreak: 'none', categories },
});
