import type { InputFault } from '../../platform/errors/problem.js';
import type { HandIn } from './intake.js';
import { submissionContent } from '../../contract/submission-content.js';
import type { FaultList } from './fault-list.js';
import { SubmissionGatherer } from './gather-submissions.js';
import { placeOf } from './rows-together.js';
import type { RowsTogether } from './rows-together.js';
import { readHeader } from './read-header.js';
import type { Header } from './read-header.js';
import { readRows } from './read-rows.js';
import { readText } from './read-text.js';
import { pointerTo, UnreadableFile } from './row-fault.js';
import type { RowFault } from './row-fault.js';
import { hasDecimalComma } from './separator.js';

/**
 * Reads a hand-in file once and yields each submission when the next one begins: the rows of one stand together, so that no more of
 * the file is held than a submission. All rows are read and every fault is told.
 * @param bytes CSV (RFC 4180), UTF-8; comma, semicolon or tab; with a header row
 * @param list takes the faults of submissions that are not among those read; where it says that the file is unsound, none of them may be used
 */
export async function* parseSubmissionsCsv(bytes: AsyncIterable<Uint8Array>, list: FaultList): AsyncGenerator<HandIn> {
  try {
    for await (const { raw, told } of gather(bytes, list)) {
      const parsed = validate(raw, told);
      if (parsed && list.isSound) yield parsed;
    }
  } catch (error) {
    if (!(error instanceof UnreadableFile)) throw error;
    list.spoil(error.fault);
  }
}

interface Gathered {
  readonly raw: RowsTogether;
  /** Where its faults go. */
  readonly told: Pick<FaultList, 'add'>;
}

/** A header with faults does not end the reading: what its rows say in the columns that were understood is told as well. */
async function* gather(bytes: AsyncIterable<Uint8Array>, list: FaultList): AsyncGenerator<Gathered> {
  let gatherer: SubmissionGatherer | undefined;
  let told: Pick<FaultList, 'add' | 'spoil'> = list;
  let hasRows = false;
  for await (const rows of readRows(readText(bytes))) {
    for (const { separator, row, cells } of rows) {
      if (gatherer) {
        hasRows = true;
        const raw = gatherer.add(row, cells);
        if (raw) yield { raw, told };
        continue;
      }
      const { header, faults } = readHeader(row, cells);
      list.spoil(...faults);
      if (faults.length > 0) told = list.about(understoodColumns(header, faults));
      gatherer = new SubmissionGatherer(header, hasDecimalComma(separator), told);
    }
  }
  const last = gatherer?.end();
  if (last) yield { raw: last, told };
  if (!gatherer) list.spoil(emptyFile(0, 'nothing', 'The file is empty.'));
  else if (!hasRows && list.faults.length === 0) list.spoil(emptyFile(1, 'a header only', 'The file has a header and no rows.'));
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
function validate(raw: RowsTogether, list: Pick<FaultList, 'add'>): HandIn | null {
  const parsed = submissionContent.safeParse(raw.content);
  if (parsed.success && !raw.isFaulty) {
    return { content: parsed.data, rows: [raw.first.row, raw.lastRow], locate: (fault) => located(raw, fault) };
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

function located(raw: RowsTogether, fault: InputFault): InputFault {
  const { row, column } = placeOf(raw, partsOf(fault.pointer));
  return { ...fault, pointer: pointerTo(row, column), row, column };
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
