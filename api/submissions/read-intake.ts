import type { FastifyRequest } from 'fastify';
import { Readable } from 'node:stream';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { InputFault } from '../platform/errors/problem.js';
import { notValid, toFaults } from '../platform/http/validation.js';
import { parseSubmissionsCsv } from './import/parse-submissions-csv.js';
import type { ReadSubmission } from './import/parse-submissions-csv.js';
import type { RowFault } from './import/row-fault.js';
import type { HandIn, Intake } from './intake.js';
import { requireAnnounced, wholeFile } from './file-size.js';
import { submissionContent } from './submission-content.js';

/**
 * Reads what came with a request: one submission as JSON, or a file with many as text/csv or multipart/form-data.
 * @throws Problem 422 for JSON that is not valid, 413 above 50 MB, 415 for another content type
 */
export async function readIntake(request: FastifyRequest): Promise<Intake> {
  requireAnnounced(request.headers['content-length'], request.isMultipart());
  if (request.isMultipart()) return readFile(await onlyFile(request));
  if (request.body instanceof Readable) return readFile(request.body);
  if (!/^application\/json\b/i.test(request.headers['content-type'] ?? '')) throw new Problem(platformProblems['request/media-type']);
  const parsed = submissionContent.safeParse(request.body);
  if (!parsed.success) throw notValid(toFaults(parsed.error.issues));
  return { isFile: false, faults: [], furtherFaults: 0, handIns: [{ content: parsed.data, rows: null, locate: (fault) => fault }] };
}

/** The one file of a form. */
export async function onlyFile(request: FastifyRequest): Promise<Readable> {
  const part = await request.file();
  if (!part) throw notValid([{ pointer: '', code: 'file_missing', detail: 'The form has no file. Send one file with the readings.' }]);
  return part.file;
}

async function readFile(bytes: Readable): Promise<Intake> {
  const { submissions, faults, furtherFaults } = await parseSubmissionsCsv(wholeFile(bytes));
  return { isFile: true, handIns: submissions.map(toHandIn), faults: faults.map(toFault), furtherFaults };
}

const pointerTo = (row: number, column: string): string =>
  `/rows/${row}${column === '' ? '' : `/${column.replaceAll('~', '~0').replaceAll('/', '~1')}`}`;

/** A fault of a file as the API tells it. */
export const toFault = ({ code, row, column, found, expected, message }: RowFault): InputFault => ({
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
