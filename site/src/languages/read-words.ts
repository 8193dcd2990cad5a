import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type german from './de.json';
import type { Message } from './en.js';
import type { Words } from './put-words.js';

/** What a file of words lacks, and what it has beyond what the site says: no type check passes with any. */
type Untold<Own> = Exclude<Message, keyof Own> | Exclude<keyof Own, Message>;
type Whole<Own> = [Untold<Own>] extends [never] ? URL : { untold: Untold<Own> };

/** Languages that the site speaks, each with its file of words; English stands in the sources themselves. */
export const LANGUAGES: { en: null; de: Whole<typeof german> } = { en: null, de: new URL('de.json', import.meta.url) };

/**
 * Words of a language, and what a house puts in their place by the `words.json` of its folder.
 * @throws Error where there is no such language, no such folder, or no table of words in it
 */
export function readWords(language: string, folder: string): Words {
  if (!Object.hasOwn(LANGUAGES, language))
    throw new Error(`SITE_LANGUAGE is ${language}; expected one of ${Object.keys(LANGUAGES).join(', ')}.`);
  if (folder !== '' && !existsSync(folder))
    throw new Error(`HOUSE_TEXTS is ${folder}, where nothing is. Make the folder, or leave it empty.`);
  const own = join(folder, 'words.json');
  const file = LANGUAGES[language as keyof typeof LANGUAGES];
  return { ...(file && wordsIn(file)), ...(folder !== '' && existsSync(own) && wordsIn(own)) };
}

function wordsIn(file: string | URL): Words {
  const words: unknown = JSON.parse(readFileSync(file, 'utf8'));
  if (typeof words === 'object' && words !== null && Object.values(words).every((one) => typeof one === 'string') && !Array.isArray(words))
    return words as Words;
  throw new Error(`${String(file)} is no table of words; expected texts by the words that they replace: {"Find a line": "Pick a line"}.`);
}
