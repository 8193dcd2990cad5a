import type { Category } from '../../../api/contract/documents/category-document.js';
import { withinSentence } from './locale.js';
import { say } from './say.js';

type Told = Pick<Category, 'name' | 'unplaced'>;

/** What a table of values without places is, before the reason. */
export const NO_PLACES = say`Values without places: nobody can say how far two of them must lie apart to be told apart.`;

/** Why a table has values and no places. */
export const UNPLACED: Record<NonNullable<Category['unplaced']>, string> = {
  nothingKnownOfEffects: say`Nothing tells what rigs and testers differ by: too few lines were pulled twice, and no method, round robin, control pull or edition before says it.`,
  nothingKnownOfScatter: say`Nothing tells how readings scatter: of no line were enough specimens measured. Two or more of each would tell.`,
};

const namesOf = (categories: readonly Told[]): string => categories.map(({ name }) => name).join(say` and `);

/** Where categories have no places, and what that means overall: a sentence, and then each reason with those that it holds for. None where all have them. */
export function unplacedWords(
  categories: readonly Told[],
  hasOverall: boolean,
): { readonly what: string; readonly reasons: readonly string[] } | null {
  const without = categories.filter(({ unplaced }) => unplaced);
  if (without.length === 0) return null;
  const found = [...Map.groupBy(without, ({ unplaced }) => unplaced)];
  return {
    what: hasOverall
      ? say`There are no places in ${namesOf(without)}: the overall order is that of the other categories.`
      : say`There are no places in ${namesOf(without)}, and so none overall.`,
    reasons: found.flatMap(([reason, those]) => {
      if (!reason) return [];
      return found.length > 1 ? `${namesOf(those)}: ${withinSentence(UNPLACED[reason])}` : UNPLACED[reason];
    }),
  };
}

/** What the score leaves out of the categories that the house names; empty where it counts all. */
export function notCountedWords(categories: readonly Told[], hasOverall: boolean): string {
  if (!hasOverall) return say`In this edition nobody has a score.`;
  const without = categories.filter(({ unplaced }) => unplaced);
  return without.length === 0 ? '' : say`In this edition the score leaves out ${namesOf(without)}, where there are no places.`;
}
