import { say } from './say.js';
import type { CategoryRow, Movement } from '../../../api/contract/documents/release-documents.js';

/** `up 3`, `down 2`, `same place`, `new`; with the run at the top from the second edition on. */
export function movementWords({ kind, places, runAtTop }: Movement): string {
  const run = runAtTop > 1 ? say`, first ${runAtTop} editions in a row` : '';
  if (kind === 'moved' && places !== null) return `${places > 0 ? say`up` : say`down`} ${Math.abs(places)}${run}`;
  const words = {
    moved: say`moved`,
    unchanged: say`same place`,
    new: say`new`,
    returned: say`returned`,
    notComparable: say`not comparable`,
  };
  return words[kind] + run;
}

/** Whether any place of a table can be compared: in a division that is ranked by itself for the first time none can. */
export const hasMovement = (rows: readonly { readonly movement: Pick<Movement, 'kind'> }[]): boolean =>
  rows.some(({ movement }) => movement.kind !== 'new');

/** Said once for a table rather than in each of its rows. */
export const NONE_BEFORE = say`None of them had a place in such a table in the edition before, so no places are compared.`;

/** Whether the measured value changed beyond noise. */
export function changeWords({ kind, percent }: CategoryRow['change']): string {
  if (kind === 'notComparable') return say`not comparable`;
  if (kind === 'first') return say`first measured`;
  if (kind === 'withinNoise') return say`within noise`;
  return percent === null ? say`changed` : `${percent.startsWith('-') ? percent.replace('-', '−') : `+${percent}`} %`;
}
