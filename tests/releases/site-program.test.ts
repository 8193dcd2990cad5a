import { existsSync } from 'node:fs';
import { appendFile, cp, mkdir, mkdtemp, readdir, readFile, rm, stat, symlink, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { basename, join, relative, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { compiledSite, renderSite } from '../../api/releases/site/site-program.js';
import { writeSitemap } from '../../site/src/rendering/sitemap.js';
import { makeReleases } from '../support/make-release.js';

const told = (release: string, out: string, more = {}) => ({
  RELEASES_FOLDER: release,
  PUBLIC_URL: 'https://trials.example',
  SITE_OUT: out,
  ...more,
});
const LONG_AGO = new Date(Date.now() - 2 * 3_600_000);
const compiled = () => readdir(join(folder, 'site/programs'));

let folder: string;
let texts: string;
const settings = () => ({
  DATA_FOLDER: folder,
  SITE_LANGUAGES: ['en' as const],
  HOUSE_TEXTS: texts,
  PATH: process.env['PATH'] ?? '',
});

async function filesIn(site: string): Promise<Record<string, string>> {
  const entries = await readdir(site, { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile()).map(({ parentPath, name }) => join(parentPath, name));
  return Object.fromEntries(await Promise.all(files.map(async (file) => [relative(site, file), await readFile(file, 'latin1')] as const)));
}

/** Surroundings of the compiler, read while it runs. */
async function surroundingsOfCompiler(): Promise<string> {
  for (;;) {
    for (const pid of (await readFile(`/proc/self/task/${process.pid}/children`, 'utf8')).trim().split(' ')) {
      const of = (what: string) => readFile(`/proc/${pid}/${what}`, 'utf8').catch(() => '');
      if ((await of('cmdline')).includes('astro.mjs')) return of('environ');
    }
    await new Promise((resume) => setTimeout(resume, 5));
  }
}

let program: string;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'programs-'));
  texts = join(folder, 'texts');
  await mkdir(texts);
  for (const editions of [1, 2]) await makeReleases(join(folder, `api-${editions}`), { editions, variants: 3 });
  // What was cut off while it was compiled lies there under another name.
  for (const left of ['half-of-another', 'half-long-ago']) await mkdir(join(folder, 'site/programs', left), { recursive: true });
  await utimes(join(folder, 'site/programs/half-long-ago'), LONG_AGO, LONG_AGO);
  const both = Promise.all([compiledSite(settings(), 'en'), compiledSite(settings(), 'en')]);
  const surroundings = await surroundingsOfCompiler();
  // Under its name a program is whole: while it is compiled it has another.
  expect((await compiled()).filter((name) => !name.startsWith('half-'))).toEqual([]);
  const [made, again] = await both;
  expect(again).toBe(made);
  program = made;
  // A container has no home to keep in it whether it may.
  expect(surroundings).toContain('ASTRO_TELEMETRY_DISABLED=1');
});
afterAll(() => rm(folder, { recursive: true }));

test('the site is compiled once: its program renders one release after the other, for any address, and needs nothing beside it', async () => {
  const entry = join(program, 'pages/prerender-entry.mjs');
  const before = await readFile(entry, 'utf8');
  await utimes(program, LONG_AGO, LONG_AGO);
  const outs = [1, 2].map((editions) => join(folder, `site-${editions}`));
  for (const [at, out] of outs.entries()) {
    expect(await compiledSite(settings(), 'en')).toBe(program);
    const PUBLIC_URL = `https://${at}.example`;
    expect(await renderSite(program, settings(), 'en', told(join(folder, `api-${at + 1}`), out, { PUBLIC_URL }))).toEqual([]);
    expect(await readFile(join(out, 'index.html'), 'utf8')).toContain(`<link rel="canonical" href="${PUBLIC_URL}/">`);
    expect(await readFile(join(out, 'sitemap-0.xml'), 'utf8')).toContain(`<loc>${PUBLIC_URL}/editions/2026/</loc>`);
  }
  expect(outs.map((out) => existsSync(join(out, 'editions/2025/index.html')))).toEqual([false, true]);
  expect((await readFile(entry, 'utf8')) === before).toBe(true);
  // One that is in use is not taken for one of an older version.
  expect(Date.now() - (await stat(program)).mtimeMs).toBeLessThan(3_600_000);
  expect((await compiled()).filter((name) => name !== 'half-of-another')).toHaveLength(1);
});

test('a change in any source asks for the compiler, without which the program of unchanged ones still renders', async () => {
  const [here, checkout] = [process.cwd(), join(folder, 'checkout')];
  const sources = ['site/src/pages/404.astro', 'api/contract/roles.ts', 'api/measurement/units/round-half-even.ts', 'package-lock.json'];
  for (const part of ['api', 'site', 'package.json', 'package-lock.json']) await cp(part, join(checkout, part), { recursive: true });
  const packages = join(checkout, 'node_modules');
  await symlink(resolve('node_modules'), packages, 'junction');
  const address = pathToFileURL(join(checkout, 'api/releases/site/site-program.ts')).href;
  const copied = (await import(address)) as { compiledSite: typeof compiledSite };
  await rm(packages);
  process.chdir(checkout);
  try {
    for (const source of sources) {
      expect(await copied.compiledSite(settings(), 'en')).toBe(program);
      await appendFile(source, '\n');
      await expect(copied.compiledSite(settings(), 'en')).rejects.toThrow(/Cannot find module .*astro\.mjs/);
      await cp(join(here, source), source);
    }
    // So an image brings it, whatever the folder of its data.
    await cp(program, join('shipped/site/programs', basename(program)), { recursive: true });
    const shipped = await copied.compiledSite({ ...settings(), DATA_FOLDER: 'empty' }, 'en');
    expect([shipped, existsSync('empty')]).toEqual([resolve('shipped/site/programs', basename(program)), false]);
  } finally {
    process.chdir(here);
  }
});

test('several threads write the same bytes as one', async () => {
  const outs = [1, 3].map((threads) => [String(threads), join(folder, `by-${threads}`)] as const);
  for (const [RENDER_THREADS, out] of outs)
    await renderSite(program, settings(), 'en', told(join(folder, 'api-2'), out, { RENDER_THREADS }));
  const [one, three] = await Promise.all(outs.map(([, out]) => filesIn(out)));
  expect(Object.keys(one!).length).toBeGreaterThan(100);
  expect(Object.keys(three!).sort()).toEqual(Object.keys(one!).sort());
  expect(Object.keys(one!).filter((file) => one![file] !== three![file])).toEqual([]);
});

test('a page that fails ends the work in whichever thread, and is named with what is wrong', async () => {
  const broken = join(folder, 'broken');
  await makeReleases(broken, { editions: 1, variants: 3 });
  const documents = join(broken, 'v1/releases/2026/1/documents');
  const [variant] = await readdir(join(documents, 'variants'));
  await writeFile(join(documents, 'variants', variant!), '{}');
  for (const RENDER_THREADS of ['1', '2'])
    await expect(renderSite(program, settings(), 'en', told(broken, join(folder, 'none'), { RENDER_THREADS }))).rejects.toThrow(
      new RegExp(`The page /\\S+ \\(src/pages/.*\\) cannot be rendered\\. .*${variant} is not what was published`),
    );
});

test('another word of the house, language or place of a language compiles anew; words and pages that the site has not are named', async () => {
  const before = await compiled();
  await writeFile(join(texts, 'words.json'), '{"No such words": "None"}');
  await expect(compiledSite(settings(), 'en')).rejects.toThrow('The site has no words “No such words”.');
  expect(await compiled()).toEqual(before);
  await writeFile(join(texts, 'words.json'), '{"Skip to the content": "On with it"}');
  const own = await compiledSite(settings(), 'en');
  await mkdir(join(texts, 'pages'));
  await writeFile(join(texts, 'pages/nowhere.html'), '<h1>Nowhere</h1>');
  const out = join(folder, 'own');
  await expect(renderSite(own, settings(), 'en', told(join(folder, 'api-1'), out))).rejects.toThrow('The site has no page /nowhere/.');
  expect(await readFile(join(out, 'index.html'), 'utf8')).toContain('On with it');
  const below = await compiledSite({ ...settings(), SITE_LANGUAGES: ['de', 'en'] }, 'en');
  await renderSite(below, { ...settings(), SITE_LANGUAGES: ['de', 'en'] }, 'en', told(join(folder, 'api-1'), join(folder, 'below')));
  expect(await readFile(join(folder, 'below/sitemap-index.xml'), 'utf8')).toContain('https://trials.example/en/sitemap-0.xml');
  expect(new Set([program, own, below]).size).toBe(3);
});

test('of more addresses than a sitemap may name there are several, each named in the list of them', async () => {
  const out = join(folder, 'many');
  await mkdir(out);
  const paths = Array.from({ length: 45_001 }, (_, at) => `/variants/${at}/`);
  await writeSitemap(out, new URL('https://trials.example/'), paths);
  const addressesIn = async (file: string) =>
    [...(await readFile(join(out, file), 'utf8')).matchAll(/<loc>([^<]+)</g)].map(([, loc]) => loc!);
  expect(await addressesIn('sitemap-index.xml')).toEqual([0, 1].map((at) => `https://trials.example/sitemap-${at}.xml`));
  const named = [...(await addressesIn('sitemap-0.xml')), ...(await addressesIn('sitemap-1.xml'))];
  expect([named.length, named.at(-1)]).toEqual([45_001, 'https://trials.example/variants/45000/']);
});
