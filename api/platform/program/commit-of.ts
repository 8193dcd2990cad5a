import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

const COMMIT = /^[0-9a-f]{40}$/;

/**
 * Commit that a folder is of, told by the file COMMIT that an image bears, else by a checkout's own records; git need not be installed.
 * @returns 40 hexadecimal digits; null when neither tells it
 */
export function commitOf(folder: string): string | null {
  const told = textOf(join(folder, 'COMMIT')) || headOf(gitFolderOf(folder));
  return COMMIT.test(told) ? told : null;
}

/** In a second working tree .git is a file that names the folder. */
function gitFolderOf(checkout: string): string {
  const named = /^gitdir: (.+)$/.exec(textOf(join(checkout, '.git')))?.[1];
  return resolve(checkout, named ?? '.git');
}

function headOf(gitFolder: string): string {
  const head = textOf(join(gitFolder, 'HEAD'));
  const branch = /^ref: (.+)$/.exec(head)?.[1];
  if (branch === undefined) return head;
  const common = resolve(gitFolder, textOf(join(gitFolder, 'commondir')) || '.');
  const packed = textOf(join(common, 'packed-refs')).split('\n');
  return textOf(join(common, branch)) || (packed.find((line) => line.endsWith(` ${branch}`))?.split(' ')[0] ?? '');
}

/** Empty where there is no such file, or a folder in its place. */
function textOf(file: string): string {
  try {
    return readFileSync(file, 'utf8').trim();
  } catch {
    return '';
  }
}
