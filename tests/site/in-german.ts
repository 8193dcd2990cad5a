import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { buildSite } from '../support/build-site.js';
import { serveFolders } from '../support/serve-folder.js';
import { pagesOf, textsNotIn, type SitePage } from '../support/site-folder.js';
import { layoutOf } from './look-at.js';

/** Words that no German sentence has, and names rarely. */
const ENGLISH = /\b(?:the|of|and|is|are|with|for|that|not|from|by|to|at|it|on|which|place|value|overall)\b/;

/** Tests of the site in a second language, of the releases that `at` serves. */
export function testGerman(at: () => { browser: Browser; url: string }, paths: readonly string[]): void {
  describe('in German', () => {
    let folder: string;
    let pages: SitePage[];

    beforeAll(async () => {
      folder = await mkdtemp(join(tmpdir(), 'site-'));
      const [apiUrl, out] = [at().url, join(folder, 'de')];
      await buildSite({ apiUrl, publicUrl: 'https://trials.example', out, language: 'de', languages: ['en', 'de'] });
      pages = await pagesOf(out);
    });
    afterAll(() => rm(folder, { recursive: true }));

    test('whose words are longer, no template scrolls sideways or breaks its tables', async () => {
      const german = await serveFolders(folder);
      const inGerman = paths.map((path) => `/de${path}`);
      expect(await layoutOf(at().browser, german.url, inGerman)).toEqual([]);
      await german.close();
    });

    test('what house and program say in English says that it is (WCAG 2.2, 3.1.2)', () => {
      const strange = pages.flatMap(({ path, html }) => textsNotIn('en', html).map((text) => `${path}: ${text.trim()}`));
      expect(strange.length).toBeGreaterThan(1000);
      expect(strange.filter((text) => ENGLISH.test(text.replace(/^\S+ /, '')))).toEqual([]);
    });

    test('where a claim was read is said in the words of the house, whatever words these are', () => {
      const sources = pages.flatMap(({ html }) => {
        const [, claims = ''] = /id="claims"[\s\S]*?<tbody[^>]*>([\s\S]*?)<\/tbody>/.exec(html) ?? [];
        return [...claims.matchAll(/<th[\s\S]*?<span class="label"[^>]*>\s*<span([^>]*)>/g)].map(([, attributes]) => attributes);
      });
      expect(sources.length).toBeGreaterThan(20);
      expect(new Set(sources)).toEqual(new Set([' lang="en"']));
    });

    test('a size is a name and stands as labels print it; what was measured takes the comma', () => {
      const all = pages.map(({ html }) => html).join('\n');
      expect([/PE \d,\d/.exec(all), all.includes('PE 1.0'), /\d,\d\u00a0N/.test(all)]).toEqual([null, true, true]);
    });
  });
}
