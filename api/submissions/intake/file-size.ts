import type { Readable } from 'node:stream';
import { LARGEST_FILE_BYTES } from '../../contract/body-sizes.js';
import { platformProblems } from '../../platform/errors/platform.errors.js';
import { Problem } from '../../platform/errors/problem.js';

/** Room for what a form puts around its file. */
const FORM_BYTES = 10_000;

/**
 * Refuses a body that announces itself as too large, before it is read.
 * @throws Problem 413
 */
export function requireAnnounced(contentLength: string | undefined, isForm: boolean): void {
  const mostBytes = LARGEST_FILE_BYTES + (isForm ? FORM_BYTES : 0);
  if (Number(contentLength ?? 0) > mostBytes) throw new Problem(platformProblems['request/too-large']);
}

/**
 * Hands on a file piece by piece; one that is too large, or was cut, ends in a refusal.
 * @throws Problem 413 at the first byte above the largest file
 */
export async function* wholeFile(bytes: Readable): AsyncGenerator<Uint8Array> {
  let size = 0;
  for await (const chunk of bytes as AsyncIterable<Uint8Array>) {
    size += chunk.byteLength;
    if (size > LARGEST_FILE_BYTES) throw new Problem(platformProblems['request/too-large']);
    yield chunk;
  }
  // The server cuts a form's file at the limit, silently.
  if ('truncated' in bytes && bytes.truncated === true) throw new Problem(platformProblems['request/too-large']);
}
