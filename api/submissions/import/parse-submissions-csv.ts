import { submissionContent } from '../submission-content.js';
import type { SubmissionContent } from '../submission-content.js';
import { columnOfField, SubmissionGatherer } from './gather-submissions.js';
import type { RawSubmission } from './gather-submissions.js';
import { readHeader } from './read-header.js';
import { readRows } from './read-rows.js';
import { readText, UnreadableFile } from './read-text.js';
import { rowFault } from './row-fault.js';
import type { RowFault } from './row-fault.js';

/** A submission read from a file, with the rows that it stood in. */
export interface ReadSubmission {
  readonly content: SubmissionContent;
  readonly rows: readonly [number, number];
  /** Row and column of a place in the content (RFC 6901 pointer). */
  placeOf(pointer: string): { row: number; column: string };
}

export interface ReadFile {
  readonly submissions: ReadSubmission[];
  /** Faults of submissions that are not among those read; in the order of the rows. */
  readonly faults: RowFault[];
}

/**
 * Reads a hand-in file as a stream. All rows are read and every fault is told.
 * @param bytes CSV (RFC 4180), UTF-8, comma or semicolon, with a header row
 */
export async function parseSubmissionsCsv(bytes: AsyncIterable<Uint8Array>): Promise<ReadFile> {
  try {
    return await readWhole(bytes);
  } catch (error) {
    if (error instanceof UnreadableFile) return { submissions: [], faults: [error.fault] };
    const { code, message, lines } = error as { code?: string; message: string; lines?: number };
    if (!code?.startsWith('CSV_')) throw error;
    return {
      submissions: [],
      faults: [rowFault(lines ?? 0, '', message, 'CSV as in RFC 4180', `The file is not CSV from here on: ${message}`)],
    };
  }
}

async function readWhole(bytes: AsyncIterable<Uint8Array>): Promise<ReadFile> {
  let gatherer: SubmissionGatherer | undefined;
  for await (const { separator, row, cells } of readRows(readText(bytes))) {
    if (gatherer) {
      gatherer.add(row, cells);
      continue;
    }
    const { header, faults } = readHeader(cells);
    if (faults.length > 0) return { submissions: [], faults };
    gatherer = new SubmissionGatherer(header, separator === ';');
  }
  if (!gatherer)
    return { submissions: [], faults: [rowFault(0, '', 'nothing', 'a header row and rows of readings', 'The file is empty.')] };
  if (gatherer.submissions.size === 0)
    return {
      submissions: [],
      faults: [...gatherer.faults, rowFault(1, '', 'a header only', 'rows of readings', 'The file has a header and no rows.')],
    };
  return validated([...gatherer.submissions.values()], gatherer.faults);
}

function validated(raws: readonly RawSubmission[], found: readonly RowFault[]): ReadFile {
  const faults = [...found];
  const submissions: ReadSubmission[] = [];
  for (const raw of raws) {
    const isTouched = found.some(({ row }) => row >= raw.firstRow && row <= raw.lastRow);
    const parsed = submissionContent.safeParse(raw.content);
    if (parsed.success && !isTouched) {
      submissions.push({
        content: parsed.data,
        rows: [raw.firstRow, raw.lastRow],
        placeOf: (pointer) => placeOf(raw, pointer.split('/').slice(1)),
      });
      continue;
    }
    for (const issue of parsed.error?.issues ?? []) {
      const { row, column } = placeOf(raw, issue.path.map(String));
      faults.push(rowFault(row, column, textAt(raw.content, issue.path), issue.message, `${column}: ${issue.message}.`));
    }
  }
  return { submissions, faults: faults.sort((a, b) => a.row - b.row) };
}

function placeOf(raw: RawSubmission, path: readonly string[]): { row: number; column: string } {
  const [field, specimen, part, reading] = path;
  if (field !== 'specimens') return { row: raw.firstRow, column: columnOfField(path) };
  const place = raw.places[Number(specimen)];
  const readingPlace = part === 'readings' ? place?.readings[Number(reading)] : undefined;
  if (readingPlace) return readingPlace;
  return {
    row: place?.row ?? raw.firstRow,
    column: part === 'invalidReason' ? 'invalid reason' : part === 'number' ? 'specimen' : (part ?? 'specimen'),
  };
}

function textAt(content: unknown, path: readonly PropertyKey[]): string {
  const value = path.reduce<unknown>((inside, key) => (inside as Record<PropertyKey, unknown> | undefined)?.[key], content);
  return typeof value === 'string' || typeof value === 'number' ? String(value) : JSON.stringify(value ?? '').slice(0, 80);
}
