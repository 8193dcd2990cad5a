import { addSpecimen } from './add-specimen.js';
import type { FaultList } from './fault-list.js';
import { FileRow } from './file-row.js';
import type { RawSubmission } from './raw-submission.js';
import type { Header } from './read-header.js';
import { UnreadableFile } from './row-fault.js';
import type { RowFault } from './row-fault.js';

/** Submissions that one file may hold. */
export const MOST_SUBMISSIONS = 5000;

/** Columns that say the same on every row of a submission. */
const SHARED = ['edition', 'method version', 'zone', 'instruments', 'temperature', 'humidity', 'seen label', 'note'];
const ANSWERS: Readonly<Record<string, boolean>> = { '': false, yes: true, true: true, '1': true, no: false, false: false, '0': false };

/** What tells submissions of a file apart. */
export const keyOf = (row: FileRow): string => JSON.stringify(['submission', 'spool', 'method', 'bench day'].map((name) => row.text(name)));

/** Puts rows together: a submission is the rows of one mark, spool, method and bench day, and is whole with the last of them. */
export class SubmissionGatherer {
  private readonly open = new Map<string, RawSubmission>();
  private begun = 0;

  /** @param lastRows key of a submission → number of its last row */
  constructor(
    private readonly header: Header,
    private readonly hasDecimalComma: boolean,
    private readonly faults: Pick<FaultList, 'add'>,
    private readonly lastRows: ReadonlyMap<string, number>,
  ) {}

  /**
   * @returns the submission that the row makes whole; null while rows of it are to come, and for a row of none
   * @throws UnreadableFile when there are more submissions than a file may hold
   */
  add(rowNumber: number, cells: readonly string[]): RawSubmission | null {
    if (cells.length !== this.header.width) {
      this.faults.add(misshapen(rowNumber, cells.length, this.header.width));
      return null;
    }
    const row = new FileRow(rowNumber, cells, this.header, this.hasDecimalComma);
    const key = keyOf(row);
    const known = this.open.get(key);
    const submission = known ?? begin(row);
    const faults = [...(known ? differences(known.first, row) : faultsOfBeginning(row)), ...addSpecimen(submission, row)];
    submission.lastRow = rowNumber;
    submission.isFaulty ||= faults.length > 0;
    this.faults.add(...faults);
    if (!known && this.begun === MOST_SUBMISSIONS) throw tooMany(rowNumber);
    if (!known) this.begun += 1;
    if (this.lastRows.get(key) !== rowNumber) {
      this.open.set(key, submission);
      return null;
    }
    this.open.delete(key);
    return submission;
  }
}

function begin(row: FileRow): RawSubmission {
  const [zone, note] = [row.text('zone'), row.text('note')];
  const content = {
    edition: row.text('edition'),
    spool: row.text('spool'),
    method: row.text('method'),
    methodVersion: row.wholeNumber('method version') ?? 1,
    benchDay: row.text('bench day'),
    ...(zone ? { zone } : {}),
    ...(note ? { note } : {}),
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
      message: `Found "${found}", expected ${expected}.`,
    });
  if (row.wholeNumber('method version') === null) tell('method version', version, 'a whole number above zero');
  if (!Object.hasOwn(ANSWERS, seen.toLowerCase())) tell('seen label', seen, 'yes or no');
  return faults;
}

function differences(first: FileRow, row: FileRow): RowFault[] {
  const pairs = [
    ...SHARED.map((name) => [row.columnOf(name), first.text(name), row.text(name)] as const),
    [row.unitColumnOf('temperature'), first.unitOf('temperature'), row.unitOf('temperature')] as const,
  ];
  return pairs
    .filter(([, before, now]) => before !== now)
    .map(([column, before, now]) => ({
      code: 'row_differs',
      row: row.row,
      column,
      found: now,
      expected: before,
      message: `Differs from row ${first.row} of the same submission. Make them equal, or mark two submissions in a column "submission".`,
    }));
}

const misshapen = (row: number, found: number, expected: number): RowFault => ({
  code: 'row_width',
  row,
  column: '',
  found: `${found} cells`,
  expected: `${expected} cells`,
  message:
    'The row has another number of cells than the header, so that it cannot be told to which submission it belongs. Look for a missing or extra separator.',
});

const tooMany = (row: number): UnreadableFile =>
  new UnreadableFile({
    code: 'too_many_submissions',
    row,
    column: '',
    found: `more than ${MOST_SUBMISSIONS} submissions`,
    expected: `at most ${MOST_SUBMISSIONS}`,
    message: 'The file holds too many submissions. Split it and send the parts.',
  });
