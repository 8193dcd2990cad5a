import type { CategoryRow, Movement } from '../../../api/contract/documents/release-documents.js';

/** `up 3`, `down 2`, `same place`, `new`; with the run at the top from the second edition on. */
export function movementWords({ kind, places, runAtTop }: Movement): string {
  const run = runAtTop > 1 ? `, first ${runAtTop} editions in a row` : '';
  if (kind === 'moved' && places !== null) return `${places > 0 ? 'up' : 'down'} ${Math.abs(places)}${run}`;
  const words = { moved: 'moved', unchanged: 'same place', new: 'new', returned: 'returned', notComparable: 'not comparable' };
  return words[kind] + run;
}

/** Whether the measured value changed beyond noise. */
export function changeWords({ kind, percent }: CategoryRow['change']): string {
  if (kind === 'notComparable') return 'not comparable';
  if (kind === 'first') return 'first measured';
  if (kind === 'withinNoise') return 'within noise';
  return percent === null ? 'changed' : `${percent.startsWith('-') ? '' : '+'}${percent} %`;
}
