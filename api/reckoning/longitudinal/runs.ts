import type { RecordsDocument } from '../../contract/documents/release-documents.js';
import type { SeasonOf } from './seasons.js';

type Run = RecordsDocument['runs'][number];

/** Editions in a row in first place, of every variant that ever was there: overall and by category, longest first. */
export function runsOf(seasons: readonly SeasonOf[]): Run[] {
  const tables = [...new Set(seasons.flatMap(({ places }) => [...places.keys()]))];
  return tables.flatMap((table) => runsIn(table, seasons).sort((one, other) => other.editions.length - one.editions.length));
}

function runsIn(table: string, seasons: readonly SeasonOf[]): Run[] {
  const done: Run[] = [];
  let going = new Map<string, string[]>();
  for (const { edition, places } of seasons) {
    const first = (places.get(table) ?? []).filter(({ place }) => place === 1).map(({ variant }) => variant);
    for (const [variant, editions] of going) if (!first.includes(variant)) done.push({ table, variant, editions, isGoingOn: false });
    going = new Map(first.map((variant) => [variant, [...(going.get(variant) ?? []), edition]]));
  }
  return [...done, ...[...going].map(([variant, editions]) => ({ table, variant, editions, isGoingOn: true }))];
}
