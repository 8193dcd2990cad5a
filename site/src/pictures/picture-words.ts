import { say } from '../words/say.js';
import { scaleLinear } from 'd3-scale';
import type { CategoryDocument, EditionDocument } from '../../../api/contract/documents/release-documents.js';
import type { Release, Tables } from '../release/load-release.js';
import { figures } from '../words/figures.js';
import { formatDate } from '../words/format-date.js';
import { setWords } from '../words/lead-words.js';
import { fullName } from '../words/variant-words.js';
import type { Picture } from './picture.js';

/** As many as there is room for below a title. */
const [MOST_LINES, MOST_ROWS] = [5, 5];

/** What is shown where an edition is shared: who came first in each division, and whether that is sure. */
export async function editionPicture(release: Release): Promise<Picture> {
  const { house, edition, isDemo } = await release.edition();
  const tables = await Promise.all((await release.tables()).map((one) => one.edition()));
  const { publishedAt, revision } = release.summary;
  const lines = [...tables.map(firstWords).slice(0, MOST_LINES - 1), say`Published ${formatDate(publishedAt)}, revision ${revision}`];
  return { address: addressOfEdition(edition.slug), house, title: edition.name, lines, rows: [], mark: markOf(isDemo), span: null };
}

function firstWords({ overall, division }: EditionDocument): string {
  // Short, so that how sure it is has room on the line.
  const first = overall.filter(({ place }) => place === 1).map(({ variant: { line, size } }) => figures(`${line.name} ${size}`));
  const set = setWords(overall);
  return `${division ? `${division.name}: ` : say`First: `}${first.join(say` and `) || say`without places`}${set && `; ${set}`}`;
}

/** What is shown where a category is shared: the five first with their values and intervals. */
export async function categoryPictures(tables: Tables): Promise<Picture[]> {
  const { scheme, house } = await tables.edition();
  return Promise.all(scheme.categories.map(async ({ code }) => pictureOf(house, await tables.category(code))));
}

function pictureOf(house: string, { edition, division, category, rows, revision, isDemo }: CategoryDocument): Picture {
  const first = rows.filter(({ place }) => place !== null).slice(0, MOST_ROWS);
  const ends = rows.flatMap(({ figure: { low, value, high } }) => [low, value, high].filter((end) => end !== null).map(Number));
  const at = scaleLinear([Math.min(...ends), Math.max(...ends)], [0, 100]);
  const percent = (value: string | null) => (value === null ? null : at(Number(value)));
  const set = setWords(rows);
  return {
    address: addressOfCategory(edition.slug, division?.slug, category.code),
    house,
    title: division ? `${category.name}, ${division.name}` : category.name,
    lines: [say`${edition.name}, revision ${revision}${set && `; ${set}`}`],
    rows: first.map(({ variant, figure: { low, value, high } }) => ({
      name: figures(fullName(variant)),
      value: figures(`${value} ${category.unit}`),
      low: percent(low),
      dot: at(Number(value)),
      high: percent(high),
    })),
    mark: markOf(isDemo),
    span: null,
  };
}

/** What is said of each variant of an edition: its name, its place and the places that the evidence allows, no more than its page says. */
export async function variantPictures(release: Release): Promise<Map<string, Picture>> {
  const documents = await Promise.all((await release.tables()).map(({ edition }) => edition()));
  return new Map(documents.flatMap(picturesOf));
}

function picturesOf({ house, edition, division, overall, excluded, incomplete, isDemo }: EditionDocument): [string, Picture][] {
  const of = overall.filter(({ place }) => place !== null).length;
  const bare = [...excluded, ...incomplete].map(({ variant }) => ({ variant, place: null, placeInterval: null }));
  return [...bare, ...overall].map(({ variant, place, placeInterval }): [string, Picture] => {
    const allowed = placeInterval ? say`; the evidence allows ${placeInterval.low} to ${placeInterval.high}` : '';
    const lines = [
      division ? `${division.name}, ${edition.name}` : edition.name,
      place === null ? say`Tested, without a place` : say`Place ${place} of ${of}${allowed}`,
    ];
    const span = place !== null && placeInterval ? { ...placeInterval, place, of } : null;
    return [
      variant.slug,
      { address: addressOfVariant(variant.slug), house, title: figures(fullName(variant)), lines, rows: [], mark: markOf(isDemo), span },
    ];
  });
}

const markOf = (isDemo: boolean): string => (isDemo ? say`Invented figures for demonstration` : '');
export const addressOfEdition = (slug: string): string => `/pictures/editions/${slug}.png`;
export const addressOfCategory = (edition: string, division: string | undefined, code: string): string =>
  `/pictures/editions/${edition}/${division ? `${division}-` : ''}${code}.png`;
export const addressOfVariant = (slug: string): string => `/pictures/variants/${slug}.png`;
