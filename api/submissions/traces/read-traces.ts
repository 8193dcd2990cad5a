import type { FastifyRequest } from 'fastify';
import { Readable } from 'node:stream';
import { platformProblems } from '../../platform/errors/platform.errors.js';
import { Problem } from '../../platform/errors/problem.js';
import { notValid } from '../../platform/http/validation.js';
import { requireAnnounced, wholeFile } from '../intake/file-size.js';
import { toFault, UnreadableFile } from '../intake/row-fault.js';
import { readText } from '../intake/read-text.js';
import { onlyFile } from '../intake/read-intake.js';
import { readTraceFile } from './read-trace-file.js';
import type { TraceFile } from './add-traces.js';

/**
 * Reads a file of traces that came with a request, as text/csv or multipart/form-data.
 * @throws Problem 422 with every fault of the file, 413 above the largest file, 415 for another content type
 */
export async function readTraces(request: FastifyRequest): Promise<Omit<TraceFile, 'specimen'>> {
  requireAnnounced(request.headers['content-length'], request.isMultipart());
  const source = request.isMultipart() ? await onlyFile(request) : request.body;
  if (!(source instanceof Readable)) throw new Problem(platformProblems['request/media-type']);
  const chunks: Uint8Array[] = [];
  for await (const chunk of wholeFile(source)) chunks.push(chunk);
  const bytes = Buffer.concat(chunks);
  try {
    let text = '';
    for await (const piece of readText(Readable.from(chunks))) text += piece;
    const { traces, faults, furtherFaults } = readTraceFile(text);
    if (faults.length > 0) {
      const further = {
        pointer: '',
        code: 'further_faults',
        detail: `${furtherFaults} further faults are not listed. Correct those that are, and send the file again.`,
      };
      throw notValid([...faults.map(toFault), ...(furtherFaults > 0 ? [further] : [])]);
    }
    return { bytes, traces };
  } catch (error) {
    if (error instanceof UnreadableFile) throw notValid([toFault(error.fault)]);
    throw error;
  }
}
