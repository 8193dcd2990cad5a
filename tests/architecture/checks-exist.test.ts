/** A check that is named and not there must fail, never pass in silence. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const read = (name: string) => readFileSync(fileURLToPath(new URL(`../../${name}`, import.meta.url)), 'utf8');
const CI = read('.ci/run');
const { scripts } = JSON.parse(read('package.json')) as { scripts: Record<string, string> };

test('no script may be missing in silence', () => {
  expect([CI, ...Object.values(scripts)].filter((text) => text.includes('--if-present'))).toEqual([]);
});

test('every script that the checks of a clean clone run is there', () => {
  const named = [...CI.matchAll(/npm run ((?:--?\S+ )*)([\w:-]+)/g)].map(([, , name]) => name!);
  expect(named).toEqual(expect.arrayContaining(['typecheck', 'lint', 'architecture', 'format:check', 'openapi:lint', 'site:check']));
  expect(named.filter((name) => !(name in scripts))).toEqual([]);
});
