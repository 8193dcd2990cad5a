import type { Category } from '../../../api/contract/documents/category-document.js';
import { say } from './say.js';

/** Why a table has values and no places. */
export const UNPLACED: Record<NonNullable<Category['unplaced']>, string> = {
  nothingKnownOfEffects: say`Values without places: too few lines were pulled twice, and neither the method nor a round robin, control pulls or an edition before tell what rigs and testers differ by. So nobody can say how far two values must lie apart to be told apart.`,
  nothingKnownOfScatter: say`Values without places: of no line were enough specimens measured to tell how readings scatter. So nobody can say how far two values must lie apart to be told apart; two or more specimens of each line would tell.`,
};

/** Where categories have no places: which, what that means overall, and why. Empty where all have them. */
export function unplacedWords(categories: readonly Pick<Category, 'name' | 'unplaced'>[], hasOverall: boolean): string {
  const found = Map.groupBy(categories, ({ unplaced }) => unplaced);
  return [...found]
    .flatMap(([reason, those]) => {
      if (!reason) return [];
      const names = those.map(({ name }) => name).join(say` and `);
      return hasOverall
        ? say`There are no places in ${names}: the overall order is that of the other categories. ${UNPLACED[reason]}`
        : say`There are no places in ${names}, and so none overall. ${UNPLACED[reason]}`;
    })
    .join(' ');
}
