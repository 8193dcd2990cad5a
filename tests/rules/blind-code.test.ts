import { checkCharacter, drawBlindCode, isBlindCode, normaliseBlindCode } from '../../api/contract/blind-code.js';

/** A source of chance that can be played again. */
function lcg(seed: number): (limit: number) => number {
  let state = seed;
  return (limit) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * limit);
  };
}

const ALPHABET = '23456789ABCDEFGHJKLMNPQRSTUVWXYZ';

test.each([
  ['A12425GABC1234002', 'M', 'example of the Global Release Identifier standard, which uses ISO 7064 MOD 37,36'],
  ['00000000D07A0090', 'Q', 'example ISAN 0000-0000-D07A-0090-Q, which uses ISO 7064 MOD 37,36 (from memory)'],
  ['00000000C36D002B', 'K', 'example ISAN 0000-0000-C36D-002B-K, as in the tests of open check-digit libraries'],
])('the check character of %s is %s', (body, expected) => {
  expect(checkCharacter(body)).toBe(expected);
});

test('a code has seven characters, none of which is read for another, and is right by its own check', () => {
  const below = lcg(7);
  const codes = Array.from({ length: 500 }, () => drawBlindCode(below));
  for (const code of codes) {
    expect(code).toMatch(/^[2-9A-HJ-NP-Z]{7}$/);
    expect(isBlindCode(code)).toBe(true);
  }
  expect(new Set(codes).size).toBe(500);
});

test('every single wrong character is found', () => {
  const code = drawBlindCode(lcg(11));
  for (let place = 0; place < code.length; place++) {
    for (const wrong of ALPHABET.replace(code.charAt(place), '')) {
      expect(isBlindCode(code.slice(0, place) + wrong + code.slice(place + 1))).toBe(false);
    }
  }
});

test('two neighbours exchanged are found, but for rare pairs', () => {
  const below = lcg(13);
  let exchanged = 0;
  let missed = 0;
  for (let draw = 0; draw < 300; draw++) {
    const code = drawBlindCode(below);
    for (let place = 0; place < code.length - 1; place++) {
      const [one, other] = [code.charAt(place), code.charAt(place + 1)];
      if (one === other) continue;
      exchanged += 1;
      if (isBlindCode(code.slice(0, place) + other + one + code.slice(place + 2))) missed += 1;
    }
  }
  expect(exchanged).toBeGreaterThan(1500);
  expect(missed / exchanged).toBeLessThan(0.02);
});

test.each(['', 'ABC', '0000000', 'ABCDEFGH', 'abcdefg'])('"%s" is no blind code', (text) => {
  expect(isBlindCode(text)).toBe(false);
});

test('a code may be typed in small letters, with spaces and hyphens', () => {
  expect(normaliseBlindCode(' k7m-x2 qp ')).toBe('K7MX2QP');
});

test('a source of chance that repeats itself is found out', () => {
  const stuck = Array.from(ALPHABET).findIndex((character) => '0O1I'.includes(checkCharacter(character.repeat(6))));
  expect(stuck).toBeGreaterThanOrEqual(0);
  expect(() => drawBlindCode(() => stuck)).toThrow('source of random numbers');
});
