/** The pressed forms of a release's files, made once at publication. They lie beside its folder: in it is only what was signed. */
import type { FileStore } from '../platform/file-store/file-store.js';
import { press, PRESSED_AS, SMALLEST_TO_PRESS } from '../platform/http/press.js';
import type { Coding } from '../platform/http/press.js';
import type { ReleaseFile, SealedFile } from '../reckoning/release-files.js';

type Content = Pick<ReleaseFile, 'path' | 'content'>;
const isText = (file: Pick<SealedFile, 'path' | 'content'>): file is Content => typeof file.content === 'string';

const AT_ONCE = 4;

/** Place of the pressed form of a file in the file store. */
export const pressedPath = (releaseFolder: string, path: string, coding: Coding): string =>
  `${releaseFolder}.pressed/${path}.${PRESSED_AS[coding]}`;

/** Writes the pressed forms of texts that are worth it. */
export async function pressFiles(store: FileStore, folder: string, files: readonly Pick<SealedFile, 'path' | 'content'>[]): Promise<void> {
  const waiting = files.filter(isText).filter(({ content }) => Buffer.byteLength(content) >= SMALLEST_TO_PRESS);
  while (waiting.length > 0) await Promise.all(waiting.splice(-AT_ONCE).map((file) => writePressed(store, folder, file)));
}

async function writePressed(store: FileStore, folder: string, { path, content }: Content): Promise<void> {
  for (const coding of ['br', 'gzip'] as const)
    await store.write(pressedPath(folder, path, coding), await press(Buffer.from(content), coding));
}
