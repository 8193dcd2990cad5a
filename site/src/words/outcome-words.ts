import type { VariantDocument } from '../../../api/contract/documents/release-documents.js';
import { placesAllowed } from './group-words.js';
import { withinList } from './locale.js';
import { movementWords } from './movement-words.js';
import { say } from './say.js';

type Outcome = Pick<VariantDocument, 'overall' | 'categories' | 'history'>;

/**
 * What one would say of a placed variant to a friend: its place and how sure that is, where it is strong and where weak, how it moved.
 * @param placed how many have a place where it was placed
 * @param where what that is called: `Braided, Winter 2025/26`
 */
export function outcomeWords({ overall, categories, history }: Outcome, placed: number, where: string): string {
  if (!overall || overall.place === null) return '';
  const { place, isTied, placeInterval, couldBeFirst, movement } = overall;
  const came = isTied
    ? say`It shares place ${place} of ${placed} in ${where}`
    : place === 1
      ? say`It came first of ${placed} in ${where}`
      : say`It came in place ${place} of ${placed} in ${where}`;
  const set = couldBeFirst === true ? say` and could be the best` : '';
  const sure = placeInterval
    ? say`the evidence allows place ${placesAllowed(placeInterval)}`
    : say`how sure that place is was not stated for this edition`;
  const moved = history.length > 1 ? [say`Since the last edition: ${movementWords(movement)}.`] : [];
  return [`${came}${set}; ${sure}.`, ...endsWords(categories), ...moved].join(' ');
}

/** Where it stands highest and where lowest; nothing where all its places are one. */
function endsWords(categories: Outcome['categories']): string[] {
  const places = categories.flatMap(({ category, row }) =>
    row.place === null ? [] : [{ name: withinList(category.name), place: row.place }],
  );
  const sorted = places.toSorted((one, other) => one.place - other.place);
  const [best, worst] = [sorted[0], sorted.at(-1)];
  if (!best || !worst || best.place === worst.place) return [];
  return [say`Highest in ${best.name}, place ${best.place}; lowest in ${worst.name}, place ${worst.place}.`];
}
