import type { Movement } from '../../../api/contract/documents/release-documents.js';

/** What is placed: a value as printed, its ends, and whether more is better. */
export interface Contender {
  slug: string;
  value: string;
  low: number | null;
  high: number | null;
}

export interface Placed {
  slug: string;
  place: number;
  isTied: boolean;
  group: number | null;
  placeInterval: { low: number; high: number } | null;
}

const isApart = (one: Contender, other: Contender) => Number(one.low) > Number(other.high) || Number(other.low) > Number(one.high);

/** Places 1-2-2-4 by the printed value, groups of neighbours whose intervals meet that of the first of the group. */
export function placeRows(contenders: Contender[], direction: 'more' | 'less'): Placed[] {
  const sign = direction === 'more' ? -1 : 1;
  const sorted = [...contenders].sort(
    (one, other) => sign * (Number(one.value) - Number(other.value)) || one.slug.localeCompare(other.slug),
  );
  let group = 0;
  let head: Contender | null = null;
  return sorted.map((contender) => {
    const hasInterval = contender.low !== null;
    if (hasInterval && (head === null || isApart(head, contender))) {
      group += 1;
      head = contender;
    }
    const sure = sorted.filter((other) => hasInterval && isApart(other, contender));
    const better = sure.filter((other) => sign * (Number(other.value) - Number(contender.value)) < 0).length;
    return {
      slug: contender.slug,
      place: sorted.findIndex((other) => other.value === contender.value) + 1,
      isTied: sorted.filter((other) => other.value === contender.value).length > 1,
      group: hasInterval ? group : null,
      placeInterval: hasInterval ? { low: better + 1, high: sorted.length - (sure.length - better) } : null,
    };
  });
}

/** Movement against the places of the edition before; null there means that it was not entered. */
export function movementOf(place: number, before: { place: number; runAtTop: number } | null, isFirstEdition: boolean): Movement {
  const runAtTop = place === 1 ? (before?.runAtTop ?? 0) + 1 : 0;
  if (isFirstEdition || before === null) return { kind: 'new', places: null, runAtTop };
  const places = before.place - place;
  return { kind: places === 0 ? 'unchanged' : 'moved', places, runAtTop };
}
