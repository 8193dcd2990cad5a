/** One fact stands in one place; whatever else tells it is made from there. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { whatTells } from '../../api/contract/blind-question.js';
import { LARGEST_FILE_BYTES, sizeWords } from '../../api/contract/body-sizes.js';
import { UNITS } from '../../api/measurement/units/unit-table.js';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const read = (path: string) => readFileSync(ROOT + path, 'utf8');
const sources = ['api', 'site/src', 'site/desk/src'].flatMap((folder) =>
  readdirSync(ROOT + folder, { recursive: true, encoding: 'utf8' })
    .map((path) => `${folder}/${path.replaceAll('\\', '/')}`)
    .filter((path) => /\.(ts|tsx|astro)$/.test(path) && !path.includes('/generated/')),
);
const texts = new Map(sources.map((path) => [path, read(path)]));
const standsIn = (fact: RegExp) => [...texts].filter(([, text]) => fact.test(text)).map(([path]) => path);

test.each([
  ['the size of a body', /\b\d+ (MB|KB) |\b(8|15|50|64) \* 1024\b|\b(8|15|50|64) [KM]iB?\b/, []],
  [
    'the list of reasons for which a specimen does not count',
    /brokeAtGrip[\s\S]*outsideTimeToBreak/,
    ['api/contract/submission-content.ts', 'site/desk/src/bench/reasons.ts'],
  ],
  ['how long a password is at least', /\b(12|[Tt]welve) characters\b|SHORTEST_PASSWORD = /, ['api/contract/endpoints/accounts.ts']],
  ['how long a review is claimed for', /\btwo hours\b|HOURS = 2\b/, ['api/contract/endpoints/reviews.ts']],
  [
    'what the name of a backup begins with',
    /\^fairpull-|'fairpull-'/,
    ['api/platform/backup/make-backup.ts', 'api/submissions/intake/spooled-file.ts'],
  ],
])('%s', (_what, fact, places) => {
  expect(sources.length).toBeGreaterThan(700);
  expect(standsIn(fact)).toEqual(places);
});

test('the largest file, where no program writes it: for users, and for the proxy, which lets the API refuse', () => {
  expect(read('README.md')).toContain(`at most ${sizeWords(LARGEST_FILE_BYTES)}.`);
  const proxy = /client_max_body_size (\d+)m;/.exec(read('docker-compose.yml'))?.[1];
  expect(Number(proxy) * 1024 * 1024).toBeGreaterThan(LARGEST_FILE_BYTES);
  expect(['64 KB', '15 MB', '51 MB']).toEqual([64 * 1024, 15 * 1024 * 1024, LARGEST_FILE_BYTES + 1].map(sizeWords));
});

test('every unit that is understood is a size when a question to a tester names it', () => {
  // Of "in" the word is meant: "specimen 3 in the file".
  const symbols = Object.keys(UNITS).filter((symbol) => symbol !== 'in');
  expect(symbols.length).toBeGreaterThan(20);
  expect(symbols.filter((symbol) => whatTells(`Was it 12 ${symbol} or so?`) !== `12 ${symbol}`)).toEqual([]);
  expect(whatTells('Look at specimen 3 in the file.')).toBeNull();
});
