import type { FastifyRequest } from 'fastify';
import { Readable } from 'node:stream';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { InputFault } from '../platform/errors/problem.js';
import { notValid, toFaults } from '../platform/http/validation.js';
import { parseSubmissionsCsv } from './import/parse-submissions-csv.js';
import type { ReadSubmission } from './import/parse-submissions-csv.js';
import { LARGEST_FILE_BYTES } from './import/read-text.js';
import type { RowFault } from './import/row-fault.js';
import type { HandIn, Intake } from './intake.js';
import { submissionContent } from './submission-content.js';

/** Room for what a form puts around its file; what is longer than file and form is refused unread. */
const FORM_BYTES = 10_000;

/**
 * Reads what came with a request: one submission as JSON, or a file with many as text/csv or multipart/form-data.
 * @throws Problem 422 for JSON that is not valid, 413 above 50 MB, 415 for another content type
 */
export async function readIntake(request: FastifyRequest): Promise<Intake> {
  if (Number(request.headers['content-length'] ?? 0) > LARGEST_FILE_BYTES + FORM_BYTES)
    throw new Problem(platformProblems['request/too-large']);
  if (request.isMultipart()) return readFile(await onlyFile(request));
  if (request.body instanceof Readable) return readFile(request.body);
  if (!/^application\/json\b/i.test(request.headers['content-type'] ?? '')) throw new Problem(platformProblems['request/media-type']);
  const parsed = submissionContent.safeParse(request.body);
  if (!parsed.success) throw notValid(toFaults(parsed.error.issues));
  return { isFile: false, faults: [], furtherFaults: 0, handIns: [{ content: parsed.data, rows: null, locate: (fault) => fault }] };
}

async function onlyFile(request: FastifyRequest): Promise<Readable> {
  const part = await request.file();
  if (!part) throw notValid([{ pointer: '', code: 'file_missing', detail: 'The form has no file. Send one file with the readings.' }]);
  return part.file;
}

async function readFile(bytes: Readable): Promise<Intake> {
  const { submissions, faults, furtherFaults } = await parseSubmissionsCsv(atMost(LARGEST_FILE_BYTES, bytes));
  return { isFile: true, handIns: submissions.map(toHandIn), faults: faults.map(toFault), furtherFaults };
}

async function* atMost(mostBytes: number, bytes: Readable): AsyncGenerator<Uint8Array> {
  let size = 0;
  for await (const chunk of bytes as AsyncIterable<Uint8Array>) {
    size += chunk.byteLength;
    if (size > mostBytes) throw new Problem(platformProblems['request/too-large']);
    yield chunk;
  }
  // A form's file is cut at the limit by the server, silently.
  if ('truncated' in bytes && bytes.truncated === true) throw new Problem(platformProblems['request/too-large']);
}

const pointerTo = (row: number, column: string): string =>
  `/rows/${row}${column === '' ? '' : `/${column.replaceAll('~', '~0').replaceAll('/', '~1')}`}`;

const toFault = ({ code, row, column, found, expected, message }: RowFault): InputFault => ({
  pointer: row === 0 ? '' : pointerTo(row, column),
  code,
  detail: message,
  row,
  column,
  found,
  expected,
});

const toHandIn = ({ content, rows, placeOf }: ReadSubmission): HandIn => ({
  content,
  rows,
  locate: (fault) => {
    const { row, column } = placeOf(fault.pointer);
    return { ...fault, pointer: pointerTo(row, column), row, column };
  },
});
