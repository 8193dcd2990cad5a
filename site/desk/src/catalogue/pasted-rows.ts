/** A table of spools as it was pasted: what each column is, and each row as a request with its faults. Pure. */
import type { z } from 'zod';
import { rowRequest, withClaim } from './add-row.js';

/** Title of a column → its place in the request, and what stands there where the table has no such column. */
export const COLUMNS: readonly { readonly title: string; readonly place: string; readonly fallback: string | null }[] = [
  { title: 'maker', place: 'maker/name', fallback: '' },
  { title: 'line', place: 'line/name', fallback: '' },
  { title: 'material', place: 'line/material', fallback: 'UHMWPE' },
  { title: 'construction', place: 'line/construction', fallback: 'braided' },
  { title: 'ends', place: 'line/carriers', fallback: null },
  { title: 'density', place: 'line/densityGPerCm3', fallback: '0.97' },
  { title: 'size', place: 'variant/size', fallback: '' },
  { title: 'colour', place: 'variant/colour', fallback: '' },
  { title: 'claim', place: 'claim/printed/text', fallback: null },
  { title: 'claim unit', place: 'claim/printed/unit', fallback: 'lbf' },
  { title: 'basis', place: 'claim/basis', fallback: 'notStated' },
  { title: 'source', place: 'spool/source', fallback: 'bought' },
  { title: 'day', place: 'spool/obtainedOn', fallback: '' },
  { title: 'place', place: 'spool/place', fallback: '' },
  { title: 'lot', place: 'spool/lot', fallback: null },
  { title: 'length', place: 'spool/lengthM', fallback: null },
];

export interface PastedRow {
  /** Line of the table, the header being the first. */
  readonly line: number;
  readonly cells: readonly string[];
  readonly request: z.infer<typeof rowRequest> | null;
  readonly faults: readonly string[];
}

export interface PastedTable {
  readonly titles: readonly string[];
  /** Titles that are no column here. */
  readonly unknown: readonly string[];
  readonly missing: readonly string[];
  readonly rows: readonly PastedRow[];
}

const titleOf = (cell: string): string => cell.trim().toLowerCase();

/** With a header of these titles in any order. */
export function pastedRows(cells: readonly (readonly string[])[]): PastedTable {
  const titles = (cells[0] ?? []).map(titleOf);
  const known = COLUMNS.map(({ title }) => title);
  return {
    titles,
    unknown: titles.filter((title) => !known.includes(title)),
    missing: COLUMNS.filter(({ title, fallback }) => fallback === '' && !titles.includes(title)).map(({ title }) => title),
    rows: cells.slice(1).flatMap((row, index) => (row.every((cell) => cell === '') ? [] : [rowOf(row, titles, index + 2)])),
  };
}

function rowOf(cells: readonly string[], titles: readonly string[], line: number): PastedRow {
  const entered: Record<string, unknown> = {};
  for (const { title, place, fallback } of COLUMNS) {
    const cell = cells[titles.indexOf(title)]?.trim() ?? '';
    put(entered, place.split('/'), cell === '' ? fallback : place === 'line/carriers' ? Number(cell) : cell);
  }
  const parsed = rowRequest.safeParse(withClaim(entered));
  // The day of the claim is that of the spool, and is told once.
  const issues = parsed.success ? [] : parsed.error.issues.filter(({ path }) => path.join('/') !== 'claim/seenOn');
  const faults = issues.map(({ path, message }) => `${titleAt(path.join('/'))}: ${message}`);
  return { line, cells, request: parsed.success ? parsed.data : null, faults };
}

/** The column that a fault is in. */
export const titleAt = (place: string): string => COLUMNS.find((column) => place.startsWith(column.place))?.title ?? place;

function put(object: Record<string, unknown>, [first = '', ...rest]: readonly string[], value: unknown): void {
  if (rest.length === 0) object[first] = value;
  else put((object[first] ??= {}) as Record<string, unknown>, rest, value);
}
