import { Logger } from '@nestjs/common';
import { existsSync, mkdtempSync } from 'node:fs';
import { cp, mkdir, readdir, readFile, readlink, rename, rm, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { typedClient } from '../../api/openapi/typed-client.js';
import { CONFIG, type Config } from '../../api/config.js';
import { BuildSite } from '../../api/releases/site/build-site.js';
import { PublishRelease } from '../../api/releases/publication/publish-release.js';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { PublishedReleases } from '../../api/releases/published-releases.read-model.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { ReleasesReadModel } from '../../api/releases/releases.read-model.js';
import { readWords } from '../../site/src/languages/read-words.js';
import { createHouse, workEdition } from '../support/house.js';
import type { House } from '../support/house.js';
import { lookSeldom } from '../support/look-seldom.js';
import { linksIn, oddNumberIn, pagesOf } from '../support/site-folder.js';
import { erratumFor, moveEdition, publish } from '../support/season.js';

const LOST = 'documents/variants/gannet-20.json';
const NEVER = 'documents/variants/nobody.json';

let house: House;
let site: string;
const building = () => house.t.app.select(ReleasesModule).get(BuildSite);
const sites = async () => (await readdir(site)).filter((name) => name.startsWith('built-')).sort();
const current = () => readlink(join(site, 'current'));
const fileOf = async (revision: number, path: string) => {
  const folder = join(house.t.dataFolder, 'files/releases/2026', String(revision));
  return join(folder, (await readdir(folder))[0]!, path);
};

/** A house that speaks German, and has a word and a page of its own. */
const texts = mkdtempSync(join(tmpdir(), 'texts-'));

beforeAll(async () => {
  await mkdir(join(texts, 'pages/read'), { recursive: true });
  await writeFile(join(texts, 'words.json'), '{"Skip to the content": "Gleich zum Inhalt"}');
  await writeFile(join(texts, 'pages/read/testing.html'), '<h1>So prüfen wir</h1>');
  house = await createHouse(undefined, { SITE_LANGUAGES: 'de', HOUSE_TEXTS: texts });
  site = join(house.t.dataFolder, 'site');
  await workEdition(house, '2026');
  await moveEdition(house.editor, '2026', 'closure');
  await house.t.app.select(ReleasesModule).get(ReleaseWork).start(false);
  await publish(house.editor, '2026');
});
afterAll(async () => {
  await house.t.close();
  await rm(texts, { recursive: true });
});

test('of two builders at once one builds, from the file store: nobody listens here', async () => {
  await Promise.all([building().run(), building().run()]);
  expect(await sites()).toEqual([await current()]);
  expect(await readFile(join(site, 'current/editions/2026/index.html'), 'utf8')).toContain('gannet-20');
  expect(await readFile(join(site, 'current/read/hand-in-file/index.html'), 'utf8')).toContain('Prüftag');
});

test('a client for programs lies in the site, for any page: the one of the description that is served, byte for byte', async () => {
  const served = await house.t.call('get', '/v1/openapi.json').expect(200);
  const { module, types } = await typedClient(served.body);
  for (const [file, type, text] of [
    ['fairpull.mjs', /^(text|application)\/javascript; charset=utf-8$/, module],
    ['fairpull.d.mts', /^text\/plain; charset=utf-8$/, types],
  ] as const) {
    const { headers, body } = await house.t.call('get', `/client/${file}`).responseType('blob').expect(200);
    expect(headers['content-type']).toMatch(type);
    expect(headers).toMatchObject({ 'access-control-allow-origin': '*', 'cross-origin-resource-policy': 'cross-origin' });
    expect(String(body) === text).toBe(true);
  }
});

test('the site speaks the language of its house, in which no page has words that are not its own; its own words and pages stand', async () => {
  const pages = await pagesOf(join(site, 'current'));
  expect(pages.length).toBeGreaterThan(30);
  expect(pages.filter(({ html }) => !/<html lang="de"[ >]/.test(html)).map(({ path }) => path)).toEqual([]);
  const testing = pages.find(({ path }) => path === '/read/testing/')?.html;
  expect(testing).toContain('<main id="content" tabindex="-1"><h1>So prüfen wir</h1>');
  expect(testing).toContain('Gleich zum Inhalt');
  // Whole sentences of the words file: a short word may stand in what the house itself has written.
  const foreign = Object.entries(readWords('de', '')).filter(([words, said]) => words !== said && /^[^{<]{25,}$/.test(words));
  expect(foreign.length).toBeGreaterThan(200);
  const untold = pages.flatMap(({ path, html }) => {
    const prose = html.replaceAll(/<pre\b[\s\S]*?<\/pre>/g, '');
    return foreign.filter(([words]) => prose.includes(words)).map(([words]) => `${path}: ${words}`);
  });
  expect(untold).toEqual([]);
});

test('a second language stands below its name: every page of the first, each leading to the other and no other page out of its language', async () => {
  const before = await current();
  const config = house.t.app.get<Config>(CONFIG);
  config.SITE_LANGUAGES = ['de', 'en'];
  await building().run();
  const { PUBLIC_URL } = config;
  const pages = await pagesOf(join(site, 'current'));
  const [first, second] = [false, true].map((isBelow) => pages.filter(({ path }) => path.startsWith('/en/') === isBelow));
  expect(second!.map(({ path }) => path.slice(3)).sort()).toEqual(first!.map(({ path }) => path).sort());
  for (const { path, html } of second!) {
    expect([path, /<html lang="en"[ >]/.test(html), oddNumberIn(html)]).toEqual([path, true, null]);
    const leads = linksIn(html.replaceAll(/<(?:a|link)[^>]* hreflang="[^>]*>/g, '')).map((link) =>
      link.replace(new URL(PUBLIC_URL).origin, ''),
    );
    expect([path, leads.filter((link) => /^\/(?!(?:en|v1|docs|client|desk)(?:\/|$))/.test(link))]).toEqual([path, []]);
    expect(
      linksIn(html)
        .filter((link) => link.startsWith('/en/_astro/'))
        .every((file) => existsSync(join(site, 'current', file))),
    ).toBe(true);
  }
  const find = first!.find(({ path }) => path === '/find/')!.html;
  expect(find).toContain('<a hreflang="en" href="/en/find/" lang="en">English</a>');
  expect(find).toContain(`<link rel="alternate" hreflang="de" href="${new URL('/find/', PUBLIC_URL).href}">`);
  expect(second!.find(({ path }) => path === '/en/find/')!.html).toContain('<a hreflang="de" href="/find/" lang="de">Deutsch</a>');
  expect(JSON.parse(await readFile(join(site, 'current/en/search-index.json'), 'utf8'))[0].id).toMatch(/^\/en\//);
  expect((await house.t.call('get', '/en/nowhere/').expect(404)).text).toContain('There is no page at this address');
  expect((await house.t.call('get', '/nowhere/').expect(404)).text).not.toContain('There is no page at this address');
  const both = await current();
  config.SITE_LANGUAGES = ['de'];
  await building().run();
  expect(await current()).toBe(before);
  await rm(join(site, both), { recursive: true });
});

test('a newer program builds the site anew from the same releases; the same one does not', async () => {
  const before = await current();
  await building().run();
  expect(await current()).toBe(before);
  // What renders the next release is compiled already, where somebody has taken it away.
  const programs = join(site, 'programs');
  await rm(programs);
  await building().run();
  expect(await readdir(programs)).toEqual([expect.stringMatching(/^[0-9a-f]{64}$/)]);
  const stamp = await readFile(join(site, 'current/built-from.txt'), 'utf8');
  const client = () => readFile(join(site, 'current/client/fairpull.d.mts'), 'utf8');
  const made = await client();
  await writeFile(join(site, 'current/client/fairpull.d.mts'), 'of an older program');
  await writeFile(join(site, 'current/built-from.txt'), stamp.replace(/^\S+/, '0.0.9'));
  await building().run();
  expect(await current()).not.toBe(before);
  expect(await readFile(join(site, 'current/built-from.txt'), 'utf8')).toBe(stamp);
  expect((await client()) === made).toBe(true);
  await rm(join(site, before), { recursive: true });
});

test('a page that cannot be rendered is named; the old site stays, and nothing of the new one', async () => {
  const before = [await current(), await sites()];
  const page = join(texts, 'pages/nowhere.html');
  await writeFile(page, '<h1>Nirgends</h1>');
  await expect(building().run()).rejects.toThrow(/the site before it stays\. [^]*The site has no page \/nowhere\//);
  expect([await current(), await sites()]).toEqual(before);
  await rm(page);
});

test('the site of a release that waits is built beforehand, shown to nobody, and swapped in when its time has come', async () => {
  const before = await current();
  const publishAt = new Date(house.t.clock.now().getTime() + 3_600_000);
  const erratum = await erratumFor(house.editor, '2026', 'catalogueError', 'A name.');
  await house.editor.call('post', '/v1/editions/2026/releases').send({ erratum, publishAt: publishAt.toISOString() }).expect(202);
  const publishing = house.t.app.select(ReleasesModule).get(PublishRelease);
  const ahead = await publishing.prepare({ edition: '2026', revision: 2 });
  expect(ahead!.map(({ revision, status }) => [revision, status])).toEqual([
    [2, 'published'],
    [1, 'superseded'],
  ]);
  await building().ahead({ edition: '2026', revision: 2 }, ahead!);
  await building().run();
  expect(await current()).toBe(before);
  const [waiting] = (await sites()).filter((name) => name !== before);
  // Of another release, which was called off while it was built, nothing is left.
  await rename(join(site, `${waiting!}.ahead`), join(site, 'marked'));
  await cp(join(site, waiting!), join(site, 'built-for-none'), { recursive: true });
  await writeFile(join(site, 'built-for-none.ahead'), '{"edition":"2026","revision":3}');
  await building().run();
  expect(await sites()).toEqual([before, waiting].sort());
  await rename(join(site, 'marked'), join(site, `${waiting!}.ahead`));
  // What another builds stays while it is young; what was left long ago goes.
  for (const name of ['built-by-another', 'built-long-ago.cache']) await mkdir(join(site, name));
  const old = new Date(Date.now() - 2 * 3_600_000);
  await utimes(join(site, 'built-long-ago.cache'), old, old);
  house.t.clock.time = publishAt;
  await house.t.app.select(ReleasesModule).get(ReleaseWork).publishDue();
  await building().run();
  expect(await current()).toBe(waiting);
  expect(await sites()).toEqual(['built-by-another', before, waiting].sort());
  expect(await readFile(join(site, 'current/editions/2026/index.html'), 'utf8')).toContain('A name.');
});

describe('when a file of an old release is lost', () => {
  let before: string;
  beforeAll(async () => {
    before = await current();
    const file = await fileOf(1, LOST);
    await rename(file, `${file}.lost`);
    await publish(house.editor, '2026', await erratumFor(house.editor, '2026', 'catalogueError', 'Another name.'));
  });

  test('the old site stays, the log names the file, the release and what to do, and the worker lives on', async () => {
    const said: string[] = [];
    const log = jest.spyOn(Logger.prototype, 'error').mockImplementation((message: unknown) => void said.push(String(message)));
    const asBefore = lookSeldom('site-build');
    await house.t.app.select(ReleasesModule).get(ReleaseWork).start(true);
    asBefore();
    for (const end = Date.now() + 20_000; said.length === 0 && Date.now() < end;) await new Promise((resume) => setTimeout(resume, 50));
    log.mockRestore();
    expect(said[0]).toMatch(/^Order site-build .* failed .*: The site is not built, the one before it stays\./);
    expect(said[0]).toContain(`2026/1/${LOST}: The file is lost or changed. (digests-match)`);
    expect(said[0]).toContain('Run npm run rebuild-files, or restore from a backup');
    expect(await current()).toBe(before);
  });

  test('the API tells what is lost from what never was, and nothing is computed as if what is lost had never been', async () => {
    const ask = async (path: string) => {
      const { status, body } = await house.t.call('get', path).set('Accept-Encoding', 'identity');
      return [status, body.code, body.detail];
    };
    jest.spyOn(Logger.prototype, 'error').mockImplementation(() => undefined);
    const words = `Release 2026/1 has lost ${LOST}.`;
    expect(await ask(`/v1/releases/2026/1/${LOST}`)).toEqual([500, 'releases/file-lost', words]);
    expect((await ask(`/v1/releases/2026/1/${NEVER}`)).slice(0, 2)).toEqual([404, 'request/not-found']);
    const releases = house.t.app.select(ReleasesModule);
    const [served, kept] = [releases.get(PublishedReleases), releases.get(ReleasesReadModel)];
    const [ofServed, ofKept] = [served.find('2026', 1)!, (await kept.find('2026', 1))!];
    await expect(served.document(ofServed, LOST)).rejects.toThrow(words);
    await expect(kept.document(ofKept, LOST)).rejects.toThrow(words);
    expect([await served.document(ofServed, NEVER), await kept.document(ofKept, NEVER)]).toEqual([null, null]);
    const table = await fileOf(3, 'csv/results.csv');
    await rename(table, `${table}.lost`);
    const lost = await ask('/v1/results.csv');
    await rename(`${table}.lost`, table);
    expect(lost).toEqual([500, 'releases/file-lost', 'Release 2026/3 has lost csv/results.csv.']);
    jest.restoreAllMocks();
  });

  test('and when it is back, the next publication orders the site, which is taken up at once: this worker looks for such orders once an hour', async () => {
    const file = await fileOf(1, LOST);
    await rename(`${file}.lost`, file);
    await publish(house.editor, '2026', await erratumFor(house.editor, '2026', 'catalogueError', 'One more name.'));
    while ((await current()) === before) await new Promise((resume) => setTimeout(resume, 50));
  });
});
