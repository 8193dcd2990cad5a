import { sha256 } from '../../platform/identifiers/identifiers.js';
import { canonicalJson } from '../../reckoning/canonical-json.js';
import { tablesIn } from '../../reckoning/documents/bundle.js';
import type { PublishedEdition, StandingCheck } from './published-edition.js';

const digestsMatch: StandingCheck = {
  code: 'digests-match',
  explains:
    'Every file is of the digest that its manifest lists, and the manifest of the digest on record; each release names the one before.',
  run: (published) =>
    published.flatMap(({ name, manifest, manifestText, digest, digests }) => {
      const lost = manifest.files
        .filter(({ path, sha256: listed }) => digests.get(path) !== listed)
        .map(({ path }) => ({ where: `${name}/${path}`, words: 'The file is lost or changed.' }));
      const chain = manifest.previousDigest === null || published.some((other) => other.digest === manifest.previousDigest);
      return [
        ...(sha256(manifestText) === digest
          ? []
          : [{ where: `${name}/manifest.json`, words: 'The manifest is not of the digest on record.' }]),
        ...(chain ? [] : [{ where: `${name}/manifest.json`, words: 'The release before it is not there.' }]),
        ...lost,
      ];
    }),
};

const placesFollowValues: StandingCheck = {
  code: 'places-follow-values',
  explains:
    'In every category places are counted by order (1-2-2-4), and no printed value is worse than one of a later place, nor differs from one that shares its place, beyond what rounding to their uncertainties hides.',
  run: (published) =>
    published.flatMap(({ name, categories }) =>
      categories
        .filter((one) => !placesFollow(one))
        .map(({ category }) => ({ where: `${name}/${category.code}`, words: 'Places and values are in different orders.' })),
    ),
};

function placesFollow({ category, rows }: PublishedEdition['categories'][number]): boolean {
  const sign = category.direction === 'more' ? 1 : -1;
  const placed = rows.filter(({ place }) => place !== null);
  return placed.every((row, i) => {
    const before = placed[i - 1];
    if (!before) return row.place === 1;
    const lead = sign * (Number(before.figure.value) - Number(row.figure.value));
    // Half a last place of each, and what a difference of two doubles is off by.
    const hidden = ((lastPlaceOf(before.figure) + lastPlaceOf(row.figure)) / 2) * (1 + 1e-6);
    const inTurn = before.place === row.place ? Math.abs(lead) <= hidden : row.place === i + 1;
    return inTurn && lead >= -hidden;
  });
}

/** The place that a figure is rounded to, as its texts show it: 0.1 for 98.4, 10 for 2690 between 2600 and 2780. */
function lastPlaceOf({ value, low, high }: PublishedEdition['categories'][number]['rows'][number]['figure']): number {
  const texts = [value, low ?? value, high ?? value];
  const decimals = Math.max(...texts.map((text) => text.split('.')[1]?.length ?? 0));
  const zeros = Math.min(...texts.map((text) => /0*$/.exec(text)?.[0].length ?? 0));
  return 10 ** (decimals > 0 ? -decimals : zeros);
}

const historyWithoutGaps: StandingCheck = {
  code: 'history-without-gaps',
  explains: 'What a variant’s history says of an earlier edition is what the revision of that edition says that it was told from.',
  run: (published, told) =>
    published.flatMap(({ name, edition, variants }) =>
      variants.flatMap(({ variant, history }) =>
        history.slice(0, -1).flatMap((point) => {
          const own = told.get(`${point.edition}/${point.revision}`)?.get(variant.slug);
          return own && canonicalJson(own) === canonicalJson(point)
            ? []
            : [
                {
                  where: `${name}/${variant.slug}`,
                  words: `Its history of ${point.edition} is not what was published in ${edition.previousEdition ?? 'it'}.`,
                },
              ];
        }),
      ),
    ),
};

const figuresTraceable: StandingCheck = {
  code: 'figures-traceable',
  explains: 'Every figure counts submissions that are shown, with specimens and readings behind it.',
  run: (published) =>
    published.flatMap(({ name, variants }) =>
      variants.flatMap(({ variant, submissions, figures }) => {
        const empty = submissions.filter(({ specimens }) => specimens.every(({ readings }) => readings.length === 0));
        const untold = figures.filter(
          (figure) => figure.submissions > submissions.length || figure.submissions === 0 || figure.specimens === 0,
        );
        return [
          ...empty.map(({ reference }) => ({ where: `${name}/${variant.slug}`, words: `Submission ${reference} shows no reading.` })),
          ...untold.map(({ quantity }) => ({
            where: `${name}/${variant.slug}`,
            words: `${quantity} counts submissions that are not shown.`,
          })),
        ];
      }),
    ),
};

const exclusionsHaveReasons: StandingCheck = {
  code: 'exclusions-have-reasons',
  explains: 'Nobody is left out without a reason in words.',
  run: (published) =>
    published.flatMap(({ name, edition }) => [
      ...edition.excluded
        .filter(({ words }) => words.trim().length < 4)
        .map(({ variant }) => ({ where: `${name}/${variant.slug}`, words: 'It is left out without a reason.' })),
      ...edition.overall
        .filter(({ variant, place }) => place === null && !edition.excluded.some((one) => one.variant.slug === variant.slug))
        .map(({ variant }) => ({ where: `${name}/${variant.slug}`, words: 'It has no place, and nobody says why.' })),
    ]),
};

const documentsAgree: StandingCheck = {
  code: 'documents-agree',
  explains: 'Edition, categories and variants say the same of each row, cell by cell, and so does the bundle.',
  run: (published) => published.flatMap((one) => [...bundleDiffers(one), ...one.variants.flatMap((variant) => rowsDiffer(one, variant))]),
};

function bundleDiffers({ name, outputs, edition, categories }: PublishedEdition) {
  const byCode = (list: PublishedEdition['categories']) => [...list].sort((a, b) => (a.category.code < b.category.code ? -1 : 1));
  const isSame = tablesIn(outputs).some(
    (tables) =>
      tables.edition.division?.slug === edition.division?.slug &&
      canonicalJson(tables.edition) === canonicalJson(edition) &&
      canonicalJson(byCode(tables.categories)) === canonicalJson(byCode(categories)),
  );
  return isSame ? [] : [{ where: `${name}/bundle.json`, words: 'Its outputs are not those of the documents.' }];
}

function rowsDiffer(
  { name, edition, categories }: PublishedEdition,
  { variant, overall, categories: own }: PublishedEdition['variants'][number],
) {
  const without = ({ variant: _, ...row }: { variant: unknown }) => canonicalJson(row);
  const inEdition = edition.overall.find((row) => row.variant.slug === variant.slug);
  const isSameOverall = inEdition ? overall !== null && without(inEdition) === canonicalJson(overall) : overall === null;
  const differing = own.filter(({ category, row }) => {
    const inCategory = categories.find((one) => one.category.code === category.code)?.rows.find((one) => one.variant.slug === variant.slug);
    return !inCategory || without(inCategory) !== canonicalJson(row);
  });
  return [
    ...(isSameOverall ? [] : [{ where: `${name}/${variant.slug}`, words: 'Its page and the overall standings differ.' }]),
    ...differing.map(({ category }) => ({
      where: `${name}/${variant.slug}`,
      words: `Its page and the standings of ${category.code} differ.`,
    })),
  ];
}

/** The standing checks, in the order in which they are run: whether the files are whole, then what is in them. */
export const STANDING_CHECKS: readonly [StandingCheck, ...StandingCheck[]] = [
  digestsMatch,
  documentsAgree,
  placesFollowValues,
  historyWithoutGaps,
  figuresTraceable,
  exclusionsHaveReasons,
];
