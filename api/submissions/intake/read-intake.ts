import type { FastifyRequest } from 'fastify';
import { Readable } from 'node:stream';
import { platformProblems } from '../../platform/errors/platform.errors.js';
import { Problem } from '../../platform/errors/problem.js';
import { notValid, toFaults } from '../../platform/http/validation.js';
import { FaultList } from './fault-list.js';
import { parseSubmissionsCsv } from './parse-submissions-csv.js';
import { toFault } from './row-fault.js';
import { SpooledFile } from './spooled-file.js';
import { handInOf } from './intake.js';
import type { Intake } from './intake.js';
import { requireAnnounced, wholeFile } from './file-size.js';
import { submissionContent } from '../../contract/submission-content.js';

/**
 * Reads what came with a request, for as long as the work on it lasts: one submission as JSON, or a file with many as text/csv or
 * multipart/form-data. A file is taken in whole before the work begins, so that a slow sender holds up nobody.
 * @throws Problem 422 for JSON that is not valid, 413 above the largest file, 415 for another content type
 */
export async function withIntake<Answer>(request: FastifyRequest, work: (intake: Intake) => Promise<Answer>): Promise<Answer> {
  requireAnnounced(request.headers['content-length'], request.isMultipart());
  if (request.isMultipart()) return withFile(await onlyFile(request), work);
  if (request.body instanceof Readable) return withFile(request.body, work);
  if (!/^application\/json\b/i.test(request.headers['content-type'] ?? '')) throw new Problem(platformProblems['request/media-type']);
  const parsed = submissionContent.safeParse(request.body);
  if (!parsed.success) throw notValid(toFaults(parsed.error.issues));
  return work({
    isFile: false,
    handIns: Readable.from([handInOf(parsed.data)]),
    unread: () => ({ faults: [], furtherFaults: 0, isSound: true }),
  });
}

/** The one file of a form. */
export async function onlyFile(request: FastifyRequest): Promise<Readable> {
  const part = await request.file();
  if (!part) throw notValid([{ pointer: '', code: 'file_missing', detail: 'The form has no file. Send one file with the readings.' }]);
  return part.file;
}

async function withFile<Answer>(bytes: Readable, work: (intake: Intake) => Promise<Answer>): Promise<Answer> {
  const file = await SpooledFile.of(wholeFile(bytes));
  try {
    const list = new FaultList();
    return await work({
      isFile: true,
      handIns: parseSubmissionsCsv(file.read(), list),
      unread: () => ({ faults: list.faults.map(toFault), furtherFaults: list.furtherFaults, isSound: list.isSound }),
    });
  } finally {
    await file.close();
  }
}
