import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';

/** A page of a built site: its path and its source. */
export interface SitePage {
  path: string;
  html: string;
}

/** Every page of a built site, `/x/index.html` as `/x/`. */
export async function pagesOf(folder: string): Promise<SitePage[]> {
  const files = await readdir(folder, { recursive: true });
  const pages = files
    .filter((file) => file.endsWith('.html'))
    .map(async (file) => ({ path: `/${file.replace(/(^|\/)index\.html$/, '$1')}`, html: await readFile(join(folder, file), 'utf8') }));
  return Promise.all(pages);
}

/** What a page points to: addresses in `href` and `src`, as written, entities undone. */
export function linksIn(html: string): string[] {
  return [...html.matchAll(/\s(?:href|src)="([^"]*)"/g)].map(([, address]) => (address ?? '').replaceAll('&amp;', '&'));
}

const VOID = /^(?:!doctype|meta|link|input|br|img|hr|path|col|wbr)$/;

/** Texts of a page that are not said to be in this language; code and programs aside. */
export function textsNotIn(language: string, html: string): string[] {
  const texts: string[] = [];
  const within: boolean[] = [];
  for (const [, end = '', name = '', of = '', text = ''] of html
    .replaceAll(/<(script|code|pre|svg)\b[\s\S]*?<\/\1>/g, ' ')
    .matchAll(/<(\/?)([a-z!][\w-]*)((?:"[^"]*"|[^">])*)>|([^<]+)/gi)) {
    if (name === '' && !within.includes(true)) texts.push(text);
    if (end !== '') within.pop();
    else if (name !== '' && !VOID.test(name) && !of.endsWith('/')) within.push(of.includes(` lang="${language}"`));
  }
  return texts;
}

/** What of a page's prose is no number as readers are told it: more digits than anything is known to, or a noun that runs into its count. Digits of a digest are none. */
export const oddNumberIn = (html: string): string | null =>
  /\d[.,]\d{6,}|(?<![\w-])\d+(?=[a-z]*[g-z])[a-z]{4,}/.exec(html.replaceAll(/<(script|code|pre|svg)\b[\s\S]*?<\/\1>|<[^>]*>/g, ' '))?.[0] ??
  null;
