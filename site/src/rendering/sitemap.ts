import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { escapeXml } from '../words/escape-xml.js';

/** @see https://www.sitemaps.org/protocol.html: at most 50 000 addresses a file */
const ADDRESSES_OF_A_FILE = 45_000;
const NAMESPACE = 'http://www.sitemaps.org/schemas/sitemap/0.9';

/** Variants have one lasting address; their pages within an edition, superseded revisions and what is made to be embedded are not for search engines. */
const isLasting = (address: string) => !/\/editions\/[^/]+\/(variants|revisions)\/|\/embed\//.test(address);

const listOf = (list: string, item: string, addresses: readonly string[]): string =>
  `<?xml version="1.0" encoding="UTF-8"?><${list} xmlns="${NAMESPACE}">` +
  `${addresses.map((address) => `<${item}><loc>${escapeXml(address)}</loc></${item}>`).join('')}</${list}>`;

/**
 * Tells search engines of the pages.
 * @param root where the language begins, with the address of the house
 * @param paths of its pages
 */
export async function writeSitemap(out: string, root: URL, paths: readonly string[]): Promise<void> {
  const at = (path: string) => new URL(path.slice(1), root).href;
  const addresses = paths.map(at).filter(isLasting);
  const files: string[] = [];
  for (let from = 0; from < addresses.length; from += ADDRESSES_OF_A_FILE) {
    files.push(`/sitemap-${files.length}.xml`);
    await writeFile(join(out, files.at(-1) ?? ''), listOf('urlset', 'url', addresses.slice(from, from + ADDRESSES_OF_A_FILE)));
  }
  await writeFile(join(out, 'sitemap-index.xml'), listOf('sitemapindex', 'sitemap', files.map(at)));
}
