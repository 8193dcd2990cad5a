import type { PinnedMethod } from '../results/quantity.js';
import { FORMAT_VERSION } from '../../contract/documents/release-documents.js';
import type { CatalogueDocument, MethodDocument, VariantName } from '../../contract/documents/release-documents.js';
import { headingOf } from './release-context.js';
import type { EditionContext } from './release-context.js';

/** Makers, lines and variants of the edition by name, its method versions and the checks that it pinned. */
export function catalogueDocument(context: EditionContext): CatalogueDocument {
  return {
    ...headingOf(context),
    makers: grouped(context.variants, ({ maker }) => maker.slug).map((ofMaker) => ({
      slug: ofMaker[0].maker.slug,
      name: ofMaker[0].maker.name,
      lines: grouped(ofMaker, ({ line }) => line.slug).map((ofLine) => {
        const { line, material, construction, carriers } = ofLine[0];
        return { slug: line.slug, name: line.name, material, construction, carriers, variants: ofLine };
      }),
    })),
    methods: pinned(context).map(([{ slug, number }]) => ({ slug, number })),
    checks: [...context.checks],
  };
}

/** The pinned version of each method, as worded. */
export function methodDocuments(context: EditionContext): MethodDocument[] {
  return pinned(context).map(([version, series]) => {
    const { slug, name, number, effectiveFrom, effectiveUntil, wording, isComparableWithPrevious } = version;
    return {
      formatVersion: FORMAT_VERSION,
      slug,
      name,
      number,
      effectiveFrom,
      effectiveUntil,
      ...wording,
      series: series.map((one) => ({ ...one })),
      parameters: parametersOf(version),
      limits: limitsOf(version),
      checks: context.checks.map(({ code }) => code),
      checkSettings: Object.entries(version.checks).map(([check, { severity = null, limits = {} }]) => ({
        check,
        severity,
        limits: Object.entries(limits).map(([name, value]) => ({ name, value })),
      })),
      isComparableWithPrevious,
    };
  });
}

const pinned = ({ evidence: { edition }, methods }: EditionContext): [PinnedVersion, PinnedMethod['series']][] =>
  edition.methods.flatMap(({ slug, number, series }) =>
    methods
      .filter((version) => version.slug === slug && version.number === number)
      .map((version): [PinnedVersion, PinnedMethod['series']] => [version, series]),
  );

const parametersOf = ({ parameters: { areaFrom, settings, reproducibilityPercent } }: PinnedVersion): MethodDocument['parameters'] => [
  ...(areaFrom === null ? [] : [{ name: 'Cross-section from', value: areaFrom, unit: '' }]),
  ...settings,
  ...(reproducibilityPercent === null
    ? []
    : [{ name: 'Other rigs, testers and days differ by', value: String(reproducibilityPercent), unit: '%' }]),
];

function limitsOf({ limits }: PinnedVersion): MethodDocument['limits'] {
  const range = ({ low, high }: { low: number; high: number }) => `${low} to ${high}`;
  return [
    { name: 'Least number of valid specimens', value: String(limits.minimumSpecimens), unit: '' },
    { name: 'Largest coefficient of variation', value: String(limits.maximumCvPercent), unit: '%' },
    { name: 'Largest share of breaks at the grip', value: String(limits.gripBreakSharePercent), unit: '%' },
    ...(limits.timeToBreakS ? [{ name: 'Time to break', value: range(limits.timeToBreakS), unit: 's' }] : []),
    { name: 'Ambient temperature', value: range(limits.ambientTemperatureC), unit: '°C' },
    { name: 'Relative humidity', value: range(limits.ambientHumidityPercent), unit: '%' },
  ];
}

type PinnedVersion = EditionContext['methods'][number];

type Group = [VariantName, ...VariantName[]];

function grouped(names: readonly VariantName[], keyOf: (name: VariantName) => string): Group[] {
  const groups = new Map<string, Group>();
  for (const name of [...names].sort((a, b) => (a.slug < b.slug ? -1 : 1))) {
    const group = groups.get(keyOf(name));
    if (group) group.push(name);
    else groups.set(keyOf(name), [name]);
  }
  return [...groups].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, group]) => group);
}
