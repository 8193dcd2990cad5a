import { say } from '../words/say.js';
import { lineName } from '../../../api/contract/line-name.js';
import { loadReleases } from '../release/load-releases.js';
import { addressesOf } from '../release/addresses.js';
import type { Release } from '../release/load-release.js';
import { SYSTEMS, textIn, type InSystems } from '../words/find-words.js';
import { measuresOf, type Measures } from '../release/measures-of.js';
import { whyNotOf } from '../release/why-not.js';
import { fullName, makeWords } from '../words/variant-words.js';

interface Entry {
  id: string;
  kind: string;
  name: string;
  /** Shown below the name, and looked through as well. */
  more: string;
  /** Figures among it, in every system of units. */
  figures?: InSystems;
  /** Looked through and not shown. */
  also?: string;
}

/** Everything that can be looked for: makers, lines, variants with their figures, methods with their knots, errata; each once, of its newest edition. */
export async function GET(): Promise<Response> {
  const { current } = await loadReleases();
  const found = new Map<string, Entry>();
  for (const release of current)
    for (const entry of await entriesOf(release)) {
      const key = `${entry.kind} ${entry.name}`;
      if (!found.has(key)) found.set(key, entry);
    }
  return Response.json([...found.values()]);
}

async function entriesOf(release: Release): Promise<Entry[]> {
  const [{ makers, methods }, variants] = [await release.catalogue(), await variantsOf(release)];
  const { edition, revision, erratum } = release.summary;
  const named = makers.flatMap((maker): Entry[] => [
    { id: `/makers/${maker.slug}/`, kind: say`maker`, name: maker.name, more: '' },
    ...maker.lines.map((line) => ({
      id: `/lines/${line.slug}/`,
      kind: say`line`,
      name: lineName(maker, line),
      more: makeWords(line),
    })),
  ]);
  const errata: Entry[] = erratum
    ? [
        {
          id: `/editions/${edition}/#erratum`,
          kind: say`erratum`,
          name: say`Erratum: ${release.summary.editionName}, revision ${revision}`,
          more: erratum.words,
          also: say`errata`,
        },
      ]
    : [];
  const ofMethods = await Promise.all(methods.map(({ slug, number }) => methodEntry(release, slug, number)));
  return [...named, ...variants, ...ofMethods, ...errata, ...(await whyNotEntries(release))];
}

async function whyNotEntries(release: Release): Promise<Entry[]> {
  const { edition, revision, editionName } = release.summary;
  const addresses = await addressesOf(edition, revision);
  return (await whyNotOf(release)).map(({ slug, name, what, words, at }) => ({
    id: `${addresses.variant(slug) ?? addresses.edition}#${at}`,
    kind: what,
    name: `${name}, ${editionName}`,
    more: words,
  }));
}

async function variantsOf(release: Release): Promise<Entry[]> {
  const [{ makers }, measures] = [await release.catalogue(), await measuresOf(release)];
  const divisions = await Promise.all((await release.tables()).map(({ edition }) => edition()));
  const places = new Map(
    divisions.flatMap(({ overall, division }) => overall.map((row) => [row.variant.slug, placeWords(row.place, division)])),
  );
  const addresses = await addressesOf(release.summary.edition, release.summary.revision);
  const variants = makers.flatMap(({ lines }) => lines.flatMap((line) => line.variants.map((variant) => ({ line, variant }))));
  return variants.flatMap(({ line, variant }) => {
    const id = addresses.variant(variant.slug);
    const more = [places.get(variant.slug) ?? say`no place`, makeWords(line)].join(', ');
    const figures = figureWords(measures.get(variant.slug));
    return id === null
      ? []
      : [
          {
            id,
            kind: say`variant`,
            name: fullName(variant),
            more,
            figures,
            also: [saidOf(variant, measures.get(variant.slug)), figures[0]?.text ?? ''].join(' '),
          },
        ];
  });
}

const placeWords = (place: number | null, division: { name: string } | undefined): string =>
  place === null ? say`no place` : say`place ${place}${division ? say` in ${division.name}` : ''}`;

/** Force and diameter in each system of units: `96.2 N, 0.213 mm`. */
function figureWords(measures: Measures | undefined): InSystems {
  const all = [measures?.force, measures?.diameter].flatMap((figure) => (figure ? [figure] : []));
  return SYSTEMS.map((system) => ({ system, text: all.map(({ value, unit }) => textIn(system, value, unit)).join(', ') }));
}

/** What is on the label as one says it, what was measured in whole pounds and kilograms, and the diameter to a hundredth: `23 lbf PE 1 20 lb 9 kg 0.20 mm`. */
function saidOf(
  { ratedStrength, peNumber }: { ratedStrength: { value: string; unit: string } | null; peNumber: string | null },
  measures: Measures | undefined,
): string {
  const { force, diameter } = measures ?? {};
  const whole = (system: 'trade' | 'kgf', { value, unit }: NonNullable<Measures['force']>) =>
    Math.round(Number.parseFloat(textIn(system, value, unit)));
  return [
    ratedStrength && `${ratedStrength.value} ${ratedStrength.unit}`,
    peNumber && `PE ${peNumber}`,
    force && `${whole('trade', force)} lb ${whole('kgf', force)} kg`,
    diameter && `${Number(diameter.value).toFixed(2)} mm`,
  ]
    .filter(Boolean)
    .join(' ');
}

async function methodEntry(release: Release, slug: string, number: number): Promise<Entry> {
  const { series = [], name } = await release.method(slug, number);
  const treatments = series.flatMap((one) => (one.kind === 'breakingForce' && one.treatment ? [one.treatment.name] : []));
  return {
    id: `/methods/${slug}/${number}/`,
    kind: say`method`,
    name: say`${name}, version ${number}`,
    more: treatments.join(', '),
  };
}
