/** What a dropped table holds: readings for a sheet, or the record of one pull. Pure. */
import { READING_ROLES } from '../../../../api/contract/submission-content.js';
import type { ReadingRole } from '../../../../api/contract/submission-content.js';
import { unitFault } from '../../../../api/contract/reading-faults.js';
import type { Table } from '../table/read-table.js';
import type { Column } from './method-columns.js';

type Cells = Table['cells'];

/** Which column of the table a reading comes from, and the unit that its header says. */
export interface Source {
  readonly role: ReadingRole;
  readonly index: number;
  readonly unit: string | null;
}

export interface DroppedReadings {
  readonly titles: readonly string[];
  readonly rows: Cells;
  readonly sources: readonly Source[];
}

const NUMBER = /^[-+]?\d+([.,]\d+)?$/;
const isNumber = (cell: string | undefined): boolean => NUMBER.test(cell ?? '');
const WORDS: Readonly<Partial<Record<ReadingRole, RegExp>>> = {
  breakingForce: /force|load|peak|strength|kraft|^f\b/i,
  timeToBreak: /time|zeit|^t\b/i,
  wideDiameter: /wide|max|major/i,
  narrowDiameter: /narrow|min|minor/i,
  mass: /mass|weight/i,
  length: /length/i,
};
const OVER = /exten|elong|displ|stroke|strain|time/i;
/** Fewer rows are specimens, not samples of a pull. */
const FEWEST_SAMPLES = 30;

/** The line of the header: the last before the first row of numbers; −1 where there is none. */
const headerOf = (cells: Cells): number => cells.findIndex((row) => row.some(isNumber)) - 1;

/** Whether the table is force over extension or time of one pull: many rows that run forward. */
export function isRecord(cells: Cells): boolean {
  const at = headerOf(cells);
  const titles = cells[at] ?? [];
  const x = titles.findIndex((title) => OVER.test(title));
  const rows = cells.slice(at + 1).filter((row) => row.length > 1 && row.every(isNumber));
  if (x === -1 || rows.length < FEWEST_SAMPLES || !titles.some((title) => WORDS.breakingForce?.test(title))) return false;
  const along = rows.map((row) => valueOf(row[x] ?? ''));
  return along.every((value, index) => index === 0 || value >= (along[index - 1] ?? 0));
}

/** The highest force of a record, as it stands there, with the unit of its header. */
export function peakOf(cells: Cells): { readonly text: string; readonly unit: string | null } {
  const at = headerOf(cells);
  const index = (cells[at] ?? []).findIndex((title) => WORDS.breakingForce?.test(title));
  const texts = cells
    .slice(at + 1)
    .map((row) => row[index] ?? '')
    .filter(isNumber);
  const text = texts.reduce((highest, one) => (valueOf(one) > valueOf(highest) ? one : highest), '0');
  return { text, unit: unitIn((cells[at] ?? [])[index] ?? '', 'breakingForce') };
}

/** Readings for these columns: by the words of the header, else in their order. */
export function readingsIn(cells: Cells, columns: readonly Column[]): DroppedReadings {
  const at = headerOf(cells);
  const rows = cells.slice(at + 1).filter((row) => row.some(isNumber));
  const width = Math.max(0, ...rows.map((row) => row.length));
  const titles = Array.from({ length: width }, (_, index) => cells[at]?.[index] || `Column ${index + 1}`);
  // A running number before the readings is none.
  const numbers = titles.flatMap((_, index) => (rows.some((row) => isNumber(row[index])) && !isCount(rows, index) ? [index] : []));
  const sources = columns.flatMap(({ role }, order): Source[] => {
    const named = titles.findIndex((title) => WORDS[role]?.test(title));
    const index = named === -1 ? (numbers[order] ?? -1) : named;
    return index === -1 ? [] : [{ role, index, unit: unitIn(titles[index] ?? '', role) }];
  });
  return { titles, rows, sources };
}

/** Rows × columns of the sheet, with the unit where the header says one; with so many decimals where that is wished for. */
export const cellsFor = ({ rows, sources }: DroppedReadings, columns: readonly Column[], decimals: number | null): string[][] =>
  rows.map((row) =>
    columns.map(({ role }) => {
      const source = sources.find((one) => one.role === role);
      const cell = source ? (row[source.index] ?? '') : '';
      return isNumber(cell) ? [withDecimals(cell, decimals), source?.unit].filter(Boolean).join(' ') : cell;
    }),
  );

/** Units that the header says. */
export const unitsOf = ({ sources }: DroppedReadings): Partial<Record<ReadingRole, string>> =>
  Object.fromEntries(sources.flatMap(({ role, unit }) => (unit === null ? [] : [[role, unit] as const])));

function withDecimals(text: string, decimals: number | null): string {
  const [whole = '', part = ''] = text.split(/[.,]/);
  return decimals === null || part.length >= decimals ? text : `${whole}.${part.padEnd(decimals, '0')}`;
}

const valueOf = (text: string): number => Number(text.replace(',', '.'));
const isCount = (rows: Cells, index: number): boolean => rows.length > 1 && rows.every((row, line) => row[index] === String(line + 1));

/** "Force [lbf]", "Force (N)", "Force N" → its unit; null where it says none that a reading of this kind may have. */
function unitIn(title: string, role: ReadingRole): string | null {
  const unit = /[[(]([^\])]+)[\])]\s*$/.exec(title)?.[1] ?? /\s(\S+)$/.exec(title)?.[1] ?? '';
  return unit !== '' && unitFault(role, unit, READING_ROLES[role]) === null ? unit : null;
}
