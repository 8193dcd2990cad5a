import { readdir, readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { join } from 'node:path';
import { messagesIn } from './messages.js';

const SOURCES = fileURLToPath(new URL('..', import.meta.url));
const NONE_OF_THE_SITE = /^(languages|examples)/;

/** Every message of the site, each with the first source that says it. */
export async function messagesOfSite(): Promise<Map<string, string>> {
  const files = (await readdir(SOURCES, { recursive: true })).map((file) => file.replaceAll('\\', '/'));
  const spoken = files.filter((file) => /\.(astro|ts)$/.test(file) && !NONE_OF_THE_SITE.test(file)).toSorted();
  const said = new Map<string, string>();
  for (const file of spoken)
    for (const { words } of messagesIn(file, await readFile(join(SOURCES, file), 'utf8'))) if (!said.has(words)) said.set(words, file);
  return said;
}
