/** What other people put on their pages of a built site. */
import { loadImage } from '@napi-rs/canvas';
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { SitePage } from '../support/site-folder.js';

interface BuiltSite {
  /** Holds the releases that it was built from, in `api`. */
  readonly folder: string;
  readonly out: string;
  readonly pages: readonly SitePage[];
}

/** @param site as it stands once all before has run */
export function testEmbeds(site: () => BuiltSite): void {
  const page = (path: string): SitePage => {
    const found = site().pages.find((one) => one.path === path);
    if (!found) throw new Error(`No page ${path} was built.`);
    return found;
  };

  test('a table for other pages has no script and its own light style, says date, revision and where the rest is, and what is pinned says what replaced it', async () => {
    const { html } = page('/embed/newest/overall/');
    expect(html).not.toMatch(/<script|color-scheme" content="light dark/);
    expect(html).toMatch(/<time datetime="2026-03-01T09:00:00Z">1 March 2026<\/time>/);
    expect(html).toContain('revision 1');
    expect(html).toContain('<a href="/editions/2026/" target="_blank" rel="noopener">All of it');
    const { overall } = JSON.parse(await readFile(join(site().folder, 'api/v1/releases/2026/1/documents/edition.json'), 'utf8'));
    expect(html.match(/<tr>/g)).toHaveLength(1 + overall.length);
    for (const same of ['/embed/editions/2026/overall/', '/embed/editions/2026/revisions/1/overall/']) expect(page(same).html).toBe(html);
    expect(page('/embed/editions/2025/revisions/1/overall/').html).toContain('Superseded: revision 2 replaced this one.');
    expect(page('/embed/editions/2025/overall/').html).not.toContain('Superseded');
    expect(page('/embed/newest/overall/').html).toContain('name="robots" content="noindex"');
  });

  test('a badge says place, how sure, date and revision, as a picture of one file', async () => {
    const { overall } = JSON.parse(await readFile(join(site().folder, 'api/v1/releases/2026/1/documents/edition.json'), 'utf8'));
    const { variant, place, placeInterval } = overall[0];
    const badge = (at: string) => readFile(join(site().out, 'embed', at, 'variants', `${variant.slug}.svg`), 'utf8');
    const svg = await badge('newest');
    const placed = overall.filter((row: { place: number | null }) => row.place !== null).length;
    expect(svg).toMatch(new RegExp(`>Place ${place} of ${placed}(, shared)?<`));
    expect(svg).toContain(`>The evidence allows place ${placeInterval.low} to ${placeInterval.high}<`);
    expect(svg).toContain('>Revision 1, 1 March 2026<');
    expect(svg).not.toMatch(/script|href|url\(/);
    for (const at of ['editions/2026', 'editions/2026/revisions/1']) expect(await badge(at)).toBe(svg);
    expect(await badge('editions/2025/revisions/1')).toContain('replaced by revision 2');
    const { width, height } = await loadImage(Buffer.from(svg));
    expect(page(`/variants/${variant.slug}/`).html).toContain(`width=&quot;${width}&quot; height=&quot;${height}&quot;`);
    // Whoever is not placed has one that says so.
    const left = (await readFile(join(site().out, 'embed/newest/variants', `${overall.at(-1).variant.slug}.svg`), 'utf8')).match(
      />Not placed</g,
    );
    expect(left?.length ?? 0).toBe(overall.at(-1).place === null ? 1 : 0);
  });

  test('what is offered to be pasted leads to what is there', async () => {
    const pasted = [
      ...site().pages.filter(({ path }) => path === '/read/embed/' || path === '/editions/2026/' || path === '/editions/2025/revisions/1/'),
      page(site().pages.find(({ path }) => path.startsWith('/variants/'))!.path),
    ].flatMap(({ html }) => [...html.matchAll(/(?:src|href)=&quot;([^&]+)&quot;/g)].map(([, address]) => new URL(address!).pathname));
    expect(pasted.length).toBeGreaterThan(15);
    const files = pasted.map((path) => join(site().out, path.endsWith('/') ? `${path}index.html` : path));
    expect(files.filter((file) => !existsSync(file))).toEqual([]);
  });
}
