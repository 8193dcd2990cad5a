/** What a page of a built site weighs as it is sent, compressed [bytes]. */
import { readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { linksIn, type SitePage } from '../support/site-folder.js';

const wireBytes = async (file: string) => gzipSync(await readFile(file)).length;
const sum = (sizes: readonly number[]): number => sizes.reduce((all, size) => all + size, 0);

/** Scripts that a page loads by itself, with what these import. */
async function scriptsOf(site: string, { html }: SitePage): Promise<string[]> {
  const scripts = new Set(linksIn(html).filter((address) => address.endsWith('.js')));
  for (const script of scripts)
    for (const [, file = ''] of (await readFile(join(site, script), 'utf8')).matchAll(/\b(?:from|import)\s*["'](\.\/[^"']+\.js)["']/g))
      scripts.add(join(dirname(script), file));
  return [...scripts];
}

/** Before anything is pressed. */
export async function scriptWeightOf(site: string, page: SitePage): Promise<number> {
  return sum(await Promise.all((await scriptsOf(site, page)).map((file) => wireBytes(join(site, file)))));
}

/** Page, styles, scripts and the font that it needs. */
export async function weightOf(site: string, page: SitePage): Promise<number> {
  const assets = [...new Set(linksIn(page.html))].filter((address) => /\.(css|svg)$/.test(address)).map((address) => join(site, address));
  const sheets = await Promise.all(assets.filter((file) => file.endsWith('.css')).map((file) => readFile(file, 'utf8')));
  const fonts = [...new Set(sheets.flatMap((css) => [...css.matchAll(/url\(([^)]+\.woff2)\)/g)].map(([, address]) => address ?? '')))];
  const fontBytes = await Promise.all(fonts.map(async (address) => (await readFile(join(site, address))).length));
  const sizes = await Promise.all(assets.map(wireBytes));
  return sum([...sizes, ...fontBytes, gzipSync(page.html).length, await scriptWeightOf(site, page)]);
}
