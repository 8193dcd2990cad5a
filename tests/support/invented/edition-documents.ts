import { FORMAT_VERSION } from '../../../api/contract/documents/release-documents.js';
import type { CatalogueDocument, Category, CategoryDocument, EditionDocument } from '../../../api/contract/documents/release-documents.js';
import { inventedChecks } from './invented-methods.js';
import { inventedSuperseded } from './invented-superseded.js';
import { inventedCategories } from './measure-edition.js';
import { categoryTops, type Season } from './season.js';

type Erratum = NonNullable<EditionDocument['erratum']>;
export type Heading = Pick<EditionDocument, 'formatVersion' | 'house' | 'isDemo' | 'edition' | 'revision' | 'publishedAt'>;

export function headingOf(season: Season, revision: number): Heading {
  const { year } = season;
  return {
    formatVersion: FORMAT_VERSION,
    house: 'North Quay Line Trials',
    isDemo: true,
    edition: { slug: String(year), name: `Winter ${year}`, openedOn: `${year - 1}-10-01`, closedOn: `${year}-02-15` },
    revision,
    publishedAt: revision === 1 ? `${year}-03-01T09:00:00Z` : `${year}-04-18T17:30:00Z`,
  };
}

export function categoriesOf(season: Season): Category[] {
  return inventedCategories.map(({ category }) => ({
    ...category,
    methodVersion: category.method === 'straight-pull' ? season.straightPullVersion : 1,
    comparability: season.isFirst
      ? 'first'
      : category.method === 'straight-pull' && season.straightPullVersion === 2
        ? 'notComparable'
        : 'same',
  }));
}

export function editionDocument(season: Season, revision: number, erratum: Erratum | null): EditionDocument {
  const entries = season.entries.length;
  const superseded = inventedSuperseded(season);
  const words =
    'Each line gets a place in each of the four categories; the score is the sum of the four places, and the lowest score comes first. Equal scores share a place.';
  return {
    ...headingOf(season, revision),
    previousEdition: season.before ? String(season.before.year) : null,
    scheme: {
      slug: 'four-places',
      name: 'Four places',
      version: 1,
      words,
      combine: 'sumOfPlaces',
      countPlaces: 'afterExclusions',
      tieBreak: 'none',
      categories: categoriesOf(season),
    },
    counts: { entries, submissions: entries * 2, specimens: entries * 52, testers: 5, rigs: 3, setAside: 4 },
    overall: season.overall,
    incomplete: [...season.incomplete].map(([slug, code]) => ({
      variant: season.entries.find((entry) => entry.slug === slug)!,
      missing: [code],
      needs: [`three specimens in ${code}`],
    })),
    excluded: season.entries
      .filter(({ slug }) => season.exclusions.has(slug))
      .map((variant) => ({
        variant,
        ...season.exclusions.get(variant.slug)!,
        placeIfIncluded: season.overall.find((row) => row.variant.slug === variant.slug)?.placeIfIncluded ?? null,
      })),
    categoryTops: categoryTops(season),
    sensitivity: inventedSensitivity(season),
    ...(superseded.length > 0 ? { superseded } : {}),
    erratum,
  };
}

function inventedSensitivity({ overall, hasIntervals }: Season): EditionDocument['sensitivity'] {
  const [first, second, third] = overall.map(({ variant }) => variant.slug);
  if (!hasIntervals || !first || !second || !third) return null;
  const none = { first: [first], swappedPairs: 0, swaps: [], dropped: [] };
  return {
    leftOut: [
      { ...none, kind: 'category', name: 'knot-retention', first: [second], swappedPairs: 3, swaps: [{ ahead: second, behind: first }] },
      { ...none, kind: 'tester', name: 'A. Fenn', swappedPairs: 1, swaps: [{ ahead: third, behind: second }] },
      { ...none, kind: 'rig', name: 'R1' },
    ],
    weights: {
      firstPlaces: [
        { variant: first, percent: '61.2' },
        { variant: second, percent: '38.8' },
      ],
      smallestChange: { variant: second, weightMovedPercent: '12.5' },
    },
  };
}

export function categoryDocument(season: Season, revision: number, code: string): CategoryDocument {
  const category = categoriesOf(season).find((one) => one.code === code);
  if (!category)
    throw new Error(
      `No category ${code} in the invented house; expected one of ${inventedCategories.map((one) => one.category.code).join(', ')}.`,
    );
  const spread = { specimenPercent: '4.6', betweenSubmissionsPercent: '1.3', degreesOfFreedom: 22, specimensToTell: 38 };
  return { ...headingOf(season, revision), category, spread, rows: season.categoryRows.get(code) ?? [] };
}

export function catalogueDocument(season: Season, revision: number): CatalogueDocument {
  const makers = new Map(season.entries.map(({ maker }) => [maker.slug, maker]));
  const linesOf = (makerSlug: string) =>
    new Map(season.entries.filter(({ maker }) => maker.slug === makerSlug).map((variant) => [variant.line.slug, variant]));
  return {
    ...headingOf(season, revision),
    makers: [...makers.values()].map((maker) => ({
      ...maker,
      lines: [...linesOf(maker.slug).values()].map(({ line, material, construction, carriers }) => ({
        ...line,
        material,
        construction,
        carriers,
        variants: season.entries.filter((variant) => variant.line.slug === line.slug),
      })),
    })),
    methods: [
      { slug: 'straight-pull', number: season.straightPullVersion },
      ...['named-knot', 'abrasion', 'diameter'].map((slug) => ({ slug, number: 1 })),
    ],
    checks: inventedChecks,
  };
}
