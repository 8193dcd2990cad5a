import { normalDeviate } from '../../../api/measurement/random/normal-deviate.js';
import { randomStream } from '../../../api/measurement/random/random-stream.js';
import { seedFromDigest } from '../../../api/measurement/random/seed-from-digest.js';
import { tDeviate } from '../../../api/measurement/random/t-deviate.js';
import { normalCdf } from '../../../api/measurement/distributions/normal-distribution.js';
import { tCdf } from '../../../api/measurement/distributions/t-distribution.js';
import { errorCode } from '../support/error-code.js';

// Blackman and Vigna's xoshiro128starstar.c (version 1.1) from state 1, 2, 3, 4; the same ten numbers as an independent big-integer program gives.
test('the stream is xoshiro128**', () => {
  const stream = randomStream([1, 2, 3, 4]);
  expect(Array.from({ length: 10 }, () => stream.nextUint32())).toEqual([
    11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
  ]);
});

test('uniforms take 53 bits of two results and are never 0 or 1', () => {
  const uniform = randomStream([1, 2, 3, 4]).nextUniform();
  expect(uniform).toBe(((11520 >>> 5) * 2 ** 26 + 0.5) / 2 ** 53);
  const stream = randomStream([1, 2, 3, 4]);
  const values = Array.from({ length: 20_000 }, () => stream.nextUniform());
  expect(values.every((value) => value > 0 && value < 1)).toBe(true);
  expect(Math.abs(values.reduce((a, b) => a + b, 0) / values.length - 0.5)).toBeLessThan(4 / Math.sqrt(12 * values.length));
});

test('the last step before 1 is not rounded up to it', () => {
  // From this state the generator gives two words of ones, one after the other.
  const stream = randomStream(seedFromDigest('01'.repeat(16) + '23'.repeat(16)));
  const values = Array.from({ length: 10_000 }, () => stream.nextUniform());
  expect(Math.max(...values)).toBe(1 - 2 ** -53);
});

test('a digest gives one seed; its two halves both count', () => {
  const digest = '00000001000000020000000300000004000000100000002000000030ffffffff';
  expect(seedFromDigest(digest)).toEqual([0x11, 0x22, 0x33, 0xfffffffb]);
  expect(seedFromDigest(digest.toUpperCase())).toEqual(seedFromDigest(digest));
  for (const text of ['', 'abc', `${digest}0`, digest.replace('f', 'g'), '0'.repeat(64), 'ab'.repeat(32)]) {
    expect(errorCode(() => seedFromDigest(text))).toBe('random/not-a-digest');
  }
});

/** Largest distance between the drawn and the true distribution (Kolmogorov). */
function distance(draw: () => number, cdf: (x: number) => number, n: number): number {
  const sorted = Float64Array.from({ length: n }, draw).sort();
  return sorted.reduce((worst, x, i) => Math.max(worst, Math.abs(cdf(x) - (i + 0.5) / n)), 0);
}

test.each([Infinity, 1e9, 30, 4, 1])('deviates follow t with %d degrees of freedom', (degreesOfFreedom) => {
  const stream = randomStream([5, 6, 7, 8]);
  const found = distance(
    () => tDeviate(stream, degreesOfFreedom),
    (x) => tCdf(x, degreesOfFreedom),
    20_000,
  );
  // Kolmogorov's 0.1 % point, 1.949/√n (NIST e-Handbook 1.3.5.16 table, from memory)
  expect(found).toBeLessThan(1.949 / Math.sqrt(20_000));
});

test('normal deviates follow the normal distribution', () => {
  const stream = randomStream([9, 10, 11, 12]);
  expect(distance(() => normalDeviate(stream), normalCdf, 20_000)).toBeLessThan(1.949 / Math.sqrt(20_000));
});
