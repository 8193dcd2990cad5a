import type {
  Figure,
  HistoryPoint,
  PublishedClaim,
  VariantDocument,
  VariantName,
} from '../../../api/contract/documents/release-documents.js';
import { categoriesOf, headingOf } from './edition-documents.js';
import { inventedSuperseded } from './invented-superseded.js';
import { inventSubmissions } from './invented-submissions.js';
import type { Season } from './season.js';

const outcomeOf = (season: Season, slug: string) =>
  season.exclusions.has(slug) ? 'excluded' : season.incomplete.has(slug) ? 'incomplete' : 'placed';

function historyPoint(season: Season, slug: string, revision: number): HistoryPoint {
  const rows = categoriesOf(season).flatMap((category) => {
    const row = season.categoryRows.get(category.code)?.find(({ variant }) => variant.slug === slug);
    if (!row) return [];
    const { value, low, high, unit, trade } = row.figure;
    const isBreak = category.comparability === 'notComparable';
    // The invented erratum is about the second line of the catalogue.
    const isCorrected = revision > 1 && category.code === 'breaking-stress' && slug === season.entries[1]?.slug;
    return [
      { code: category.code, place: row.place, value, low, high, unit, trade, methodVersion: category.methodVersion, isBreak, isCorrected },
    ];
  });
  return {
    edition: String(season.year),
    revision,
    overallPlace: season.overall.find(({ variant }) => variant.slug === slug)?.place ?? null,
    outcome: outcomeOf(season, slug),
    categories: rows,
  };
}

function historyOf(season: Season, slug: string, revision: number, correctedYear: number): HistoryPoint[] {
  const earlier = season.before ? historyOf(season.before, slug, season.before.year === correctedYear ? 2 : 1, correctedYear) : [];
  return season.entries.some((entry) => entry.slug === slug) ? [...earlier, historyPoint(season, slug, revision)] : earlier;
}

function claimsOf(variant: VariantName, force: Figure, diameter: Figure, year: number): PublishedClaim[] {
  const rated = Number(variant.ratedStrength?.value ?? '20') * 4.4482216152605;
  const ratio = (100 * Number(force.value)) / rated;
  const seen = { seenOn: `${year - 1}-10-12`, source: 'Label of the spool' };
  return [
    {
      quantity: 'breakingForce',
      basis: 'average',
      printed: { text: variant.ratedStrength?.value ?? '20', unit: 'lbf' },
      value: rated.toFixed(1),
      unit: 'N',
      ...seen,
      measured: force,
      ratioPercent: ratio.toFixed(1),
      decision: ratio > 102 ? 'meets' : ratio > 100 ? 'probablyMeets' : ratio > 98 ? 'cannotSay' : 'fallsShort',
    },
    {
      quantity: 'diameter',
      basis: 'notStated',
      printed: { text: '0.19', unit: 'mm' },
      value: '0.19',
      unit: 'mm',
      ...seen,
      measured: diameter,
      ratioPercent: ((100 * Number(diameter.value)) / 0.19).toFixed(1),
      decision: 'fallsShort',
    },
    ...(variant.peNumber === null
      ? []
      : [
          {
            quantity: 'peNumber' as const,
            basis: 'class' as const,
            printed: { text: variant.peNumber, unit: 'PE' },
            value: (Number(variant.peNumber) * 22.2).toFixed(1),
            unit: 'tex',
            ...seen,
            measured: null,
            ratioPercent: null,
            decision: null,
          },
        ]),
  ];
}

function evidenceOf(season: Season, variant: VariantName) {
  const index = season.entries.indexOf(variant);
  const codes = [
    `K${index.toString(36).toUpperCase()}7-${season.year % 100}`,
    `M${index.toString(36).toUpperCase()}2-${season.year % 100}`,
  ];
  const submissions = inventSubmissions(season, variant, codes[0]!);
  const spools: VariantDocument['spools'] = [
    {
      code: codes[0]!,
      source: 'bought',
      obtainedOn: `${season.year - 1}-10-12`,
      place: 'A tackle shop in the harbour, over the counter',
      lot: 'L4471',
      reidentified: null,
    },
    {
      code: codes[1]!,
      source: index % 4 === 0 ? 'makerSupplied' : 'bought',
      obtainedOn: `${season.year - 1}-11-02`,
      place: 'By post',
      lot: null,
      reidentified:
        index === 1 && season.year === 2025
          ? 'Recorded as slate grey PE 2.0 until 18 April 2025; the label under the sticker says otherwise.'
          : null,
    },
  ];
  return { submissions, spools };
}

/** One variant in one edition, with its history up to that edition. */
export function variantDocument(season: Season, variant: VariantName, revision: number, correctedYear: number): VariantDocument {
  const { slug } = variant;
  const strip = <Row extends { variant: VariantName }>({ variant: _, ...rest }: Row) => rest;
  const overall = season.overall.find((row) => row.variant.slug === slug);
  const exclusion = season.exclusions.get(slug);
  const superseded =
    variant === season.entries[0] ? inventedSuperseded(season).map((one) => ({ ...one, submissions: one.submissions.slice(0, 3) })) : [];
  const { submissions, spools } = evidenceOf(season, variant);
  const [force, , diameter] = [submissions[0]!.figures[0]!, null, submissions[2]!.figures[0]!];
  const categories = categoriesOf(season).flatMap((category) => {
    const row = season.categoryRows.get(category.code)?.find((one) => one.variant.slug === slug);
    return row ? [{ category, row: strip(row) }] : [];
  });
  return {
    ...headingOf(season, revision),
    variant,
    outcome: outcomeOf(season, slug),
    exclusion: exclusion ? { ...exclusion, placeIfIncluded: overall?.placeIfIncluded ?? null } : null,
    missing: season.incomplete.has(slug) ? [season.incomplete.get(slug)!] : [],
    overall: overall ? strip(overall) : null,
    categories,
    figures: [...categories.map(({ row }) => row.figure), force, diameter],
    claims: claimsOf(variant, force, diameter, season.year),
    submissions,
    withdrawn: [],
    spools,
    ...(superseded.length > 0 ? { superseded } : {}),
    budgets: categories.map(({ category }) => ({
      category: category.code,
      standardUncertaintyPercent: '1.30',
      degreesOfFreedom: 84,
      lines: [
        { component: 'repeatability', of: null, sharePercent: '64.0' },
        { component: 'rig', of: 'R1', sharePercent: '21.0' },
        { component: 'tester', of: 'A. Fenn', sharePercent: '15.0' },
      ],
    })),
    history: historyOf(season, slug, revision, correctedYear),
    siblings: season.entries.filter((entry) => entry.line.slug === variant.line.slug && entry.slug !== slug),
  };
}
