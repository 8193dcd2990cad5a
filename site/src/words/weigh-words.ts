import { say } from './say.js';
import type { Standing } from '../weigh/stand.js';
import type { Weighed } from '../weigh/weighed.js';
import { chanceWords } from './chance-words.js';

/** What an order by a reader's own weights says: who is first, how sure that is, and how little would change it. */
export function ownOrderWords({ lines }: Weighed, { rows, change }: Standing): string {
  const first = rows.filter(({ place }) => place === 1);
  const [one] = first;
  if (!one) return say`Nothing is placed here.`;
  const names = first.map(({ line }) => lines[line]?.name).join(say` and `);
  const chance = one.chanceOfFirst === null || first.length > 1 ? '' : ` (${chanceWords(Math.round(100 * one.chanceOfFirst))})`;
  return say`First: ${names}${chance}. ${changeWords(lines, first.length, change)}`;
}

function changeWords(lines: Weighed['lines'], sharing: number, change: Standing['change']): string {
  if (sharing > 1) return say`Shared; any other weights may part them.`;
  const other = change && lines[change.line];
  if (!other) return say`No weights bring another there.`;
  return say`With ${(100 * change.weightMoved).toFixed(1)} % of the weight moved, ${other.name} is level.`;
}

/** Place of a row: `4=` where it is shared. */
export const placeWords = ({ place, isTied }: Pick<Standing['rows'][number], 'place' | 'isTied'>): string => `${place}${isTied ? '=' : ''}`;

/** A name in two parts: its maker, which a phone leaves out, and the rest. */
export const nameParts = ({ maker, name }: Weighed['lines'][number]): [string, string] => [
  maker === '' ? '' : `${maker} `,
  maker === '' ? name : name.slice(maker.length + 1),
];

/** What a row tells of its published place. */
export const publishedPlaceWords = (place: number, published: number): string => (place === published ? say`the same` : String(published));

/** What stands beside a score: what it is. */
export const scoreWords = (combine: Weighed['combine']): string =>
  combine === 'meanStandardScore' ? say`weighted mean of standard scores, high is better` : say`weighted mean of places, low is better`;
