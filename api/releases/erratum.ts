/** What a later revision changed, cell by cell, and what that means for places. Pure. */
import type { CategoryDocument, EditionDocument } from '../public-api/release-documents.schemas.js';

type Erratum = NonNullable<EditionDocument['erratum']>;

export interface Revision {
  readonly edition: EditionDocument;
  readonly categories: readonly CategoryDocument[];
}

/** Every cell that readers see in a table, by where it stands. */
function cellsOf({ edition, categories }: Revision): Map<string, string> {
  const overall = edition.overall.flatMap(({ variant, place, placeIfIncluded, score }) => [
    [`overall, ${variant.slug}, place`, place === null ? `(${placeIfIncluded ?? 'unplaced'})` : String(place)] as const,
    [`overall, ${variant.slug}, score`, score] as const,
  ]);
  const byCategory = categories.flatMap(({ category, rows }) =>
    rows.flatMap(({ variant, place, figure }) => [
      [`${category.code}, ${variant.slug}, place`, String(place ?? 'unplaced')] as const,
      [`${category.code}, ${variant.slug}, value`, `${figure.value} ${figure.unit}`] as const,
    ]),
  );
  return new Map([...overall, ...byCategory]);
}

/** The erratum with its changed cells and their consequences, counted. */
export function computeErratum(stated: Pick<Erratum, 'reasonCode' | 'words'>, before: Revision, after: Revision): Erratum {
  const [old, now] = [cellsOf(before), cellsOf(after)];
  const changes = [...new Set([...old.keys(), ...now.keys()])]
    .filter((where) => old.get(where) !== now.get(where))
    .map((where) => ({ where, before: old.get(where) ?? null, after: now.get(where) ?? null }));
  const count = (ending: string) => changes.filter(({ where }) => where.endsWith(ending)).length;
  const firsts = ({ edition }: Revision) =>
    edition.overall
      .filter(({ place }) => place === 1)
      .map(({ variant }) => variant.slug)
      .join();
  const top = firsts(before) === firsts(after) ? 'first place unchanged' : 'first place changed';
  const plural = (n: number, noun: string) => `${n} ${noun}${n === 1 ? '' : 's'} changed`;
  return {
    reasonCode: stated.reasonCode,
    words: stated.words,
    changes,
    consequences: `${plural(count(', value'), 'value')}, ${plural(count(', place'), 'place')}, ${top}`,
  };
}
