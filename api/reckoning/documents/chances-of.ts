import type { RowCertainty } from '../../measurement/ranking/table-certainty.js';
import { roundHalfEven } from '../../measurement/units/round-half-even.js';
import type { OverallRow } from '../../contract/documents/release-documents.js';

type Chances = Pick<OverallRow, 'chanceOfFirstPercent' | 'chanceOfFirstFivePercent' | 'chanceAheadOfNextPercent'>;

const percent = (chance: number | null | undefined): string | null =>
  chance === null || chance === undefined ? null : roundHalfEven(100 * chance, 1);

/** Chances of a row under the model, as published; null for a row about which nothing is claimed. */
export const chancesOf = (certain: RowCertainty | undefined): Chances => ({
  chanceOfFirstPercent: percent(certain?.chanceOfFirst),
  chanceOfFirstFivePercent: percent(certain?.chanceOfFirstFive),
  chanceAheadOfNextPercent: percent(certain?.chanceAheadOfNext),
});
