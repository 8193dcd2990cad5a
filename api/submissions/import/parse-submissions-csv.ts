import { submissionContent } from '../submission-content.js';
import type { SubmissionContent } from '../submission-content.js';
import { FaultList } from './fault-list.js';
import { SubmissionGatherer } from './gather-submissions.js';
import { placeOf } from './raw-submission.js';
import type { RawSubmission } from './raw-submission.js';
import { readHeader } from './read-header.js';
import type { Header } from './read-header.js';
import { readRows } from './read-rows.js';
import { readText } from './read-text.js';
import { UnreadableFile } from './row-fault.js';
import type { RowFault } from './row-fault.js';

/** A submission read from a file, with the first and last row that it stood in. */
export interface ReadSubmission {
  readonly content: SubmissionContent;
  readonly rows: readonly [number, number];
  /** Row and column of a place in the content (RFC 6901 pointer). */
  readonly placeOf: (pointer: string) => { row: number; column: string };
}

export interface ReadFile {
  readonly submissions: readonly ReadSubmission[];
  /** Faults of submissions that are not among those read; in the order of the rows, the first 1000. */
  readonly faults: readonly RowFault[];
  /** How many more faults there are. */
  readonly furtherFaults: number;
}

/**
 * Reads a hand-in file as a stream. All rows are read and every fault is told.
 * @param bytes CSV (RFC 4180), UTF-8, comma or semicolon, with a header row, at most 50 MB
 */
export async function parseSubmissionsCsv(bytes: AsyncIterable<Uint8Array>): Promise<ReadFile> {
  const list = new FaultList();
  const submissions: ReadSubmission[] = [];
  try {
    const { raws, told, isHeaderFaulty } = await gather(bytes, list);
    for (const raw of raws) {
      const read = validate(raw, told);
      if (read && !isHeaderFaulty) submissions.push(read);
    }
  } catch (error) {
    if (!(error instanceof UnreadableFile)) throw error;
    list.add(error.fault);
  }
  return { submissions, faults: list.faults, furtherFaults: list.furtherFaults };
}

interface Gathered {
  readonly raws: readonly RawSubmission[];
  /** Where faults of the rows go. */
  readonly told: Pick<FaultList, 'add'>;
  readonly isHeaderFaulty: boolean;
}

/** A header with faults does not end the reading: what its rows say in the columns that were understood is told as well. */
async function gather(bytes: AsyncIterable<Uint8Array>, list: FaultList): Promise<Gathered> {
  let gatherer: SubmissionGatherer | undefined;
  let told: Pick<FaultList, 'add'> = list;
  let isHeaderFaulty = false;
  for await (const { separator, row, cells } of readRows(readText(bytes))) {
    if (gatherer) {
      gatherer.add(row, cells);
      continue;
    }
    const { header, faults } = readHeader(row, cells);
    list.add(...faults);
    isHeaderFaulty = faults.length > 0;
    if (isHeaderFaulty) told = list.about(understoodColumns(header, faults));
    gatherer = new SubmissionGatherer(header, separator === ';', told);
  }
  if (!gatherer) list.add(emptyFile(0, 'nothing', 'The file is empty.'));
  else if (gatherer.gathered.length === 0 && list.faults.length === 0)
    list.add(emptyFile(1, 'a header only', 'The file has a header and no rows.'));
  return { raws: gatherer?.gathered ?? [], told, isHeaderFaulty };
}

function understoodColumns({ fields, unitFields }: Header, faults: readonly RowFault[]): Set<string> {
  const faulty = new Set(faults.map(({ column }) => column));
  return new Set([...fields.values(), ...unitFields.values()].map(({ title }) => title).filter((title) => !faulty.has(title)));
}

const emptyFile = (row: number, found: string, message: string): RowFault => ({
  code: 'file_empty',
  row,
  column: '',
  found,
  expected: 'a header row and rows of readings',
  message: `${message} Send the file with its readings.`,
});

/** @returns the submission, or null when it has faults, which are then on the list */
function validate(raw: RawSubmission, list: Pick<FaultList, 'add'>): ReadSubmission | null {
  const parsed = submissionContent.safeParse(raw.content);
  if (parsed.success && !raw.isFaulty) {
    return { content: parsed.data, rows: [raw.first.row, raw.lastRow], placeOf: (pointer) => placeOf(raw, partsOf(pointer)) };
  }
  for (const { path, message } of parsed.error?.issues ?? []) {
    const place = placeOf(raw, path);
    list.add({
      code: 'row_not_valid',
      ...place,
      found: textAt(raw.content, path),
      expected: message,
      message: place.column === '' ? `${message}.` : `${place.column}: ${message}.`,
    });
  }
  return null;
}

const partsOf = (pointer: string): string[] =>
  pointer
    .split('/')
    .slice(1)
    .map((part) => part.replaceAll('~1', '/').replaceAll('~0', '~'));

function textAt(content: unknown, path: readonly PropertyKey[]): string {
  const value = path.reduce<unknown>((inside, key) => (inside as Record<PropertyKey, unknown> | undefined)?.[key], content);
  if (typeof value === 'string' || typeof value === 'number') return String(value);
  return Array.isArray(value) && value.length === 0 ? '' : JSON.stringify(value ?? '');
}
