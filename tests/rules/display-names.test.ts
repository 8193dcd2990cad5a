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
