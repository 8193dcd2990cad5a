import { MeasurementError } from '../errors.js';

/** State of a generator: four words of 32 bits, not all zero. */
export type Seed = readonly [number, number, number, number];

/**
 * Turns a digest of the inputs into the seed of a stream, so that nobody can choose the draws.
 *
 * Formula: s_k = w_k ⊕ w_(k+4), w₀ … w₇ the digest's words of 32 bits in their order
 * @param hex SHA-256 digest, 64 hexadecimal digits of either case
 * @returns seed of `randomStream`
 * @throws MeasurementError 'random/not-a-digest' for any other text, and for the one in a great many whose seed would be all zero
 * @see BLACKMAN-VIGNA-2021
 * @example seedFromDigest('0000000100000000000000000000000000000000000000000000000000000000') // [1, 0, 0, 0]
 */
export function seedFromDigest(hex: string): Seed {
  const words = /^[0-9a-f]{64}$/i.test(hex) ? (hex.match(/.{8}/g) ?? []).map((word) => Number.parseInt(word, 16)) : [];
  const seed = [0, 1, 2, 3].map((k) => ((words[k] ?? 0) ^ (words[k + 4] ?? 0)) >>> 0);
  if (seed.every((word) => word === 0)) {
    throw new MeasurementError(
      'random/not-a-digest',
      `seedFromDigest: found "${hex}", expected 64 hexadecimal digits whose halves differ. Give the SHA-256 digest of the inputs.`,
    );
  }
  return seed as unknown as Seed;
}
