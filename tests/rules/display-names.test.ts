import { lookalikeOf } from '../../api/platform/identifiers/name-as-seen.js';
import { acceptanceRequest } from '../../api/contract/endpoints/accounts.js';

const accept = (displayName: string) =>
  acceptanceRequest.safeParse({ email: 'a@bench.example', displayName, password: 'a long enough password' });

test.each([
  ['A. Marsh', 'A. Marsh'],
  ['  A.   Marsh ', 'A. Marsh'],
  // Unicode Standard Annex 15, canonical composition: e + U+0301 is é.
  ['Ame\u0301lie', 'Amélie'],
  ['Ирина', 'Ирина'],
  ['林 みどり', '林 みどり'],
])('%j is a name', (typed, name) => {
  expect(accept(typed).data?.displayName).toBe(name);
});

test.each([
  ['zero width space', 'A. Mar\u200bsh', 'U+200B'],
  ['right-to-left override', 'A. \u202ehsraM', 'U+202E'],
  ['soft hyphen', 'A. Mar\u00adsh', 'U+00AD'],
  ['Hangul filler', '\u3164', 'U+3164'],
  ['a Cyrillic letter among Latin ones', 'A. M\u0430rsh', 'two scripts'],
  ['nothing but spaces', '\u00a0\u2003', '1'],
])('%s is none', (_what, typed, words) => {
  const faults = accept(typed).error?.issues ?? [];
  expect(faults.map(({ path }) => path)).toEqual([['displayName']]);
  expect(faults[0]!.message).toContain(words);
});

// Pairs of Unicode Technical Standard 39, table 1 and section 4, and of its confusables.txt.
test.each([
  ['Cyrillic throughout', '\u0455\u0441\u043e\u0440\u0435', 'scope'],
  ['Greek capitals', '\u0391\u039c\u0391', 'AMA'],
  ['fullwidth letters', '\uff21. Marsh', 'A. Marsh'],
  ['mathematical letters', '\u{1d400}my', 'Amy'],
  ['another case of the same script', 'a. marsh', 'A. Marsh'],
  ['the digit 1 for l', 'Wi11ow', 'Willow'],
])('%s: %j looks like %j', (_what, typed, known) => {
  expect(lookalikeOf(typed, ['B. Fenwick', known])).toBe(known);
});

test.each([
  ['Ирина', 'Irina'],
  ['A. Marsh', 'B. Marsh'],
  ['A. Marsh', 'A. Marsh'],
  ['José', 'Jose'],
])('%j is not taken for %j', (typed, known) => {
  expect(lookalikeOf(typed, [known])).toBeUndefined();
});
