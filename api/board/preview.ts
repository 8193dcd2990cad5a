/** What an editor sees before publishing, as cells that can be compared with the last look. Pure. */
import type { Standings } from '../measurement/ranking/standings.js';

/** Where → text. */
export type PreviewCells = Readonly<Record<string, string>>;

export interface PreviewChange {
  readonly where: string;
  readonly before: string | null;
  readonly after: string | null;
}

/** Every place and score of the standings, by where it stands. */
export function previewCells({ overall, categories }: Standings): PreviewCells {
  const places = overall.flatMap(({ id, place, score }) => [
    [`overall, ${id}, place`, String(place ?? 'unplaced')] as const,
    [`overall, ${id}, score`, score] as const,
  ]);
  const inCategories = Object.entries(categories).flatMap(([code, rows]) =>
    rows.flatMap(({ id, place, value }) => [
      [`${code}, ${id}, place`, String(place ?? 'unplaced')] as const,
      [`${code}, ${id}, value`, value] as const,
    ]),
  );
  return Object.fromEntries([...places, ...inCategories]);
}

/** Cells that differ from an earlier look, in the order of their names. */
export const changesSince = (before: PreviewCells, after: PreviewCells): PreviewChange[] =>
  [...new Set([...Object.keys(before), ...Object.keys(after)])]
    .filter((where) => before[where] !== after[where])
    .sort()
    .map((where) => ({ where, before: before[where] ?? null, after: after[where] ?? null }));
