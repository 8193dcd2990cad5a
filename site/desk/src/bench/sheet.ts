/** A sheet of readings as it is typed: one row a specimen, or a station of one. Pure. */
import type { ReadingRole, SpecimenContent } from '../../../../api/contract/submission-content.js';

export type InvalidReason = NonNullable<SpecimenContent['invalidReason']>;
export type Condition = SpecimenContent['condition'];

export interface Cell {
  readonly text: string;
  /** Unit in which it was taken; empty until it is. */
  readonly unit: string;
}

export interface Row {
  readonly number: number;
  readonly condition: Condition;
  readonly reason: InvalidReason | null;
  readonly cells: Readonly<Partial<Record<ReadingRole, Cell>>>;
}

/** What a sheet is about, from the day and the spool; it never changes within a draft. */
export interface Heading {
  readonly edition: string;
  readonly spool: string;
  readonly method: string;
  readonly methodVersion: number;
  readonly benchDay: string;
}

export interface Sheet extends Heading {
  readonly zone: string;
  readonly instruments: readonly string[];
  readonly temperature: string;
  readonly temperatureUnit: '°C' | '°F';
  readonly humidityPercent: string;
  readonly seenLabel: boolean;
  readonly note: string;
  /** Missing in a sheet that was begun before there was such a field. */
  readonly fewerBecause?: string;
  readonly units: Readonly<Partial<Record<ReadingRole, string>>>;
  readonly rows: readonly Row[];
}

const NO_CELL: Cell = { text: '', unit: '' };
export const cellOf = (row: Row, role: ReadingRole): Cell => row.cells[role] ?? NO_CELL;
export const isTaken = ({ text, unit }: Cell): boolean => text !== '' && unit !== '';
export const isEmpty = (row: Row): boolean => row.reason === null && Object.values(row.cells).every(({ text }) => text === '');
/** Whether nobody has typed anything yet. */
export const isBlank = ({ rows, note }: Sheet): boolean => note === '' && rows.every(isEmpty);
export const isWhole = (row: Row, roles: readonly ReadingRole[]): boolean => roles.every((role) => isTaken(cellOf(row, role)));

export const nextRow = (rows: readonly Row[]): Row => ({
  number: (rows.at(-1)?.number ?? 0) + 1,
  condition: rows.at(-1)?.condition ?? 'untreated',
  reason: null,
  cells: {},
});

/** The sheet with one row changed. */
export const withRow = (sheet: Sheet, index: number, change: Partial<Row>): Sheet => ({
  ...sheet,
  rows: sheet.rows.map((row, i) => (i === index ? { ...row, ...change } : row)),
});

export const withCell = (sheet: Sheet, index: number, role: ReadingRole, cell: Cell): Sheet =>
  withRow(sheet, index, { cells: { ...sheet.rows[index]?.cells, [role]: cell } });

/** Rows that count, of a condition: with a first reading and without a reason against them. */
export const validRows = (sheet: Sheet, role: ReadingRole, condition: Condition): readonly Row[] =>
  sheet.rows.filter((row) => row.reason === null && row.condition === condition && isTaken(cellOf(row, role)));

/** Mean of the readings that count [their unit]; null where there is none, or where their units differ. */
export function meanOf(rows: readonly Row[], role: ReadingRole): number | null {
  const cells = rows.map((row) => cellOf(row, role));
  if (cells.length === 0 || cells.some(({ unit }) => unit !== cells[0]?.unit)) return null;
  return cells.reduce((sum, { text }) => sum + Number(text), 0) / cells.length;
}
