import type { FastifyRequest } from 'fastify';
import { Readable } from 'node:stream';
import { LARGEST_PHOTO_BYTES } from '../contract/body-sizes.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import { notValid } from '../platform/http/validation.js';
import { photoProblems } from './photos.errors.js';

/**
 * The picture that came with a request, as image/jpeg, image/png, image/webp or the one file of a form.
 * @throws Problem 413 above the largest picture, 415 for another content type, 422 for a form without a file
 */
export async function readPicture(request: FastifyRequest): Promise<Buffer> {
  const source = request.isMultipart() ? await fileOf(request) : request.body;
  if (!(source instanceof Readable))
    throw new Problem(
      platformProblems['request/media-type'],
      'Send the picture as image/jpeg, image/png or image/webp, or as the file of a form.',
    );
  const chunks: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of source as AsyncIterable<Uint8Array>) {
    size += chunk.byteLength;
    if (size > LARGEST_PHOTO_BYTES) throw new Problem(photoProblems['photos/too-large']);
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
}

async function fileOf(request: FastifyRequest): Promise<Readable> {
  const part = await request.file();
  if (!part) throw notValid([{ pointer: '', code: 'file_missing', detail: 'The form has no file. Send one file with the picture.' }]);
  return part.file;
}
