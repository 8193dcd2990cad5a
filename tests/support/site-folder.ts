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
