import sharp from 'sharp';
import { Problem } from '../platform/errors/problem.js';
import { photoProblems } from './photos.errors.js';

/** A picture as it is kept. */
export interface CleanPicture {
  readonly bytes: Buffer;
  readonly width: number;
  readonly height: number;
}

const MOST_PIXELS = 60_000_000;
/** Longest side of what is kept: a break fills a screen, a file stays below a megabyte [pixels]. */
const LONGEST_SIDE = 2000;

/** The first bytes of the kinds that are taken: JPEG, PNG, WebP. Nothing else reaches a decoder. */
const KINDS = [/^\xff\xd8\xff/, /^\x89PNG\r\n\x1a\n/, /^RIFF.{4}WEBP/s];

/**
 * Draws a picture anew as JPEG: upright, at most 2000 pixels long, without place, time and device that the camera wrote into it.
 * @throws Problem 422 for what is no whole JPEG, PNG or WebP of at most 60 million pixels
 */
export async function cleanPicture(bytes: Buffer): Promise<CleanPicture> {
  const start = bytes.toString('latin1', 0, 16);
  if (!KINDS.some((kind) => kind.test(start)))
    throw new Problem(photoProblems['photos/not-a-picture'], `The file begins with ${describe(bytes)}; expected JPEG, PNG or WebP.`);
  try {
    const { data, info } = await sharp(bytes, { limitInputPixels: MOST_PIXELS, failOn: 'error' })
      .autoOrient()
      .resize({ width: LONGEST_SIDE, height: LONGEST_SIDE, fit: 'inside', withoutEnlargement: true })
      .flatten({ background: '#ffffff' })
      .jpeg({ quality: 82 })
      .toBuffer({ resolveWithObject: true });
    return { bytes: data, width: info.width, height: info.height };
  } catch {
    throw new Problem(
      photoProblems['photos/not-a-picture'],
      'The picture is damaged, ends early or is too large; expected a whole JPEG, PNG or WebP of at most 60 million pixels. Save or take it again.',
    );
  }
}

const describe = (bytes: Buffer): string => (bytes.length === 0 ? 'nothing' : `the bytes ${bytes.toString('hex', 0, 8)}`);
