import { addSpecimen } from './add-specimen.js';
import type { FaultList } from './fault-list.js';
import { MOST_SUBMISSIONS } from './file-limits.js';
import { FileRow } from './file-row.js';
import type { RowsTogether } from './rows-together.js';
import type { Header } from './read-header.js';
import type { RowFault } from './row-fault.js';
import { apart, misshapen, tooMany } from './row-fault-words.js';

/** Columns that say the same on every row of a submission. */
const SHARED = ['edition', 'method version', 'zone', 'instruments', 'temperature', 'humidity', 'seen label', 'note', 'fewer because'];
const ANSWERS: Readonly<Record<string, boolean>> = { '': false, yes: true, true: true, '1': true, no: false, false: false, '0': false };

/** What tells submissions of a file apart. */
const MARKS = ['submission', 'spool', 'method', 'bench day'];
const keyOf = (row: FileRow): string => JSON.stringify(MARKS.map((name) => row.text(name)));

/** Puts rows together: a submission is the rows of one mark, spool, method and bench day, which stand together, and is whole when another begins. */
export class SubmissionGatherer {
  /** Key of each submission that has begun → its first row and its last. */
  private readonly begun = new Map<string, { readonly first: number; last: number; isTold?: true }>();
  private open: { readonly key: string; readonly raw: RowsTogether } | null = null;

  constructor(
    private readonly header: Header,
    private readonly hasDecimalComma: boolean,
    private readonly faults: Pick<FaultList, 'add' | 'spoil'>,
  ) {}

  /**
   * @returns the submission that is whole, as the row begins another; else null
   * @throws UnreadableFile when there are more submissions than a file may hold
   */
  add(rowNumber: number, cells: readonly string[]): RowsTogether | null {
    if (cells.length !== this.header.width) {
      this.faults.spoil(misshapen(rowNumber, cells.length, this.header.width));
      return null;
    }
    const row = new FileRow(rowNumber, cells, this.header, this.hasDecimalComma);
    const key = keyOf(row);
    const before = this.open;
    if (before?.key === key) {
      this.take(before, row, differences(before.raw.first, row));
      return null;
    }
    this.open = { key, raw: begin(row) };
    this.count(key, row);
    this.take(this.open, row, faultsOfBeginning(row));
    return before?.raw ?? null;
  }

  /** @returns the last submission; null when there was none */
  end(): RowsTogether | null {
    return this.open?.raw ?? null;
  }

  private take({ key, raw }: { key: string; raw: RowsTogether }, row: FileRow, faults: readonly RowFault[]): void {
    const all = [...faults, ...addSpecimen(raw, row)];
    raw.lastRow = row.row;
    raw.isFaulty ||= all.length > 0;
    this.faults.add(...all);
    const seen = this.begun.get(key);
    if (seen && !seen.isTold) seen.last = row.row;
  }

  /** Rows of one submission that stand apart are told once for each submission. */
  private count(key: string, row: FileRow): void {
    const seen = this.begun.get(key);
    if (!seen && this.begun.size === MOST_SUBMISSIONS) throw tooMany(row.row);
    if (!seen) this.begun.set(key, { first: row.row, last: row.row });
    else if (!seen.isTold) {
      seen.isTold = true;
      this.faults.spoil(apart(row, seen, MARKS));
    }
  }
}

function begin(row: FileRow): RowsTogether {
  const [zone, note, fewerBecause] = [row.text('zone'), row.text('note'), row.text('fewer because')];
  const content = {
    edition: row.text('edition'),
    spool: row.text('spool'),
    method: row.text('method'),
    methodVersion: row.wholeNumber('method version') ?? 1,
    benchDay: row.text('bench day'),
    ...(zone ? { zone } : {}),
    ...(note ? { note } : {}),
    ...(fewerBecause ? { fewerBecause } : {}),
    instruments: row.text('instruments').split(/\s+/).filter(Boolean),
    ambient: {
      temperature: { value: row.decimal('temperature'), unit: row.unitOf('temperature') },
      humidityPercent: row.decimal('humidity'),
    },
    seenLabel: ANSWERS[row.text('seen label').toLowerCase()] ?? false,
    specimens: [],
  };
  return { content, first: row, lastRow: row.row, indexOf: new Map(), places: [], isFaulty: false };
}

function faultsOfBeginning(row: FileRow): RowFault[] {
  const faults: RowFault[] = [];
  const [version, seen] = [row.text('method version'), row.text('seen label')];
  const tell = (name: string, found: string, expected: string) =>
    faults.push({
      code: 'row_not_valid',
      row: row.row,
      column: row.columnOf(name),
      found,
      expected,
      message: `Found "${found}", expected ${expected}. Correct the cell.`,
    });
  if (row.wholeNumber('method version') === null) tell('method version', version, 'a whole number above zero');
  if (!Object.hasOwn(ANSWERS, seen.toLowerCase())) tell('seen label', seen, 'yes or no');
  return faults;
}

function differences(first: FileRow, row: FileRow): RowFault[] {
  const texts = SHARED.filter((name) => first.text(name) !== row.text(name)).map((name) => ({
    column: row.columnOf(name),
    found: row.text(name),
    expected: first.text(name),
  }));
  const [found, expected] = [row.unitOf('temperature'), first.unitOf('temperature')];
  const units = found === expected ? [] : [{ column: row.unitColumnOf('temperature'), found, expected }];
  return [...texts, ...units].map((difference) => ({
    code: 'row_differs',
    row: row.row,
    ...difference,
    message: `Differs from row ${first.row} of the same submission. Make them equal, or mark two submissions in a column "submission".`,
  }));
}
