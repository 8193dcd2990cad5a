import type { Seed } from './seed-from-digest.js';

/** The largest double below 1. */
const BELOW_ONE = 1 - 2 ** -53;

/** A look at the global object in each of millions of draws costs more than the draw, where tests run in a world of their own. */
const { imul, min } = Math;

/** A stream of draws that depends on its seed alone: xoshiro128**, period 2¹²⁸ − 1. */
export interface RandomStream {
  /** Whole number, every one of 2³² equally likely. */
  nextUint32(): number;
  /** Uniform in (0, 1), a multiple of 2⁻⁵³ moved off zero by half a step. */
  nextUniform(): number;
}

/**
 * Starts a seeded stream of random numbers.
 *
 * Formula: xoshiro128**: result = rotl(5·s₁, 7)·9, then the linear step of the four state words; uniforms take 53 bits of two results
 * @param seed four words of 32 bits, not all zero
 * @returns the stream; equal seeds give equal streams on any machine
 * @throws nothing: a seed of `seedFromDigest` is never all zero
 * @see BLACKMAN-VIGNA-2021
 * @example randomStream([1, 2, 3, 4]).nextUint32() // 11520
 */
export function randomStream(seed: Seed): RandomStream {
  return new Xoshiro128(seed);
}

class Xoshiro128 implements RandomStream {
  private s0: number;
  private s1: number;
  private s2: number;
  private s3: number;

  constructor([s0, s1, s2, s3]: Seed) {
    [this.s0, this.s1, this.s2, this.s3] = [s0 | 0, s1 | 0, s2 | 0, s3 | 0];
  }

  nextUint32(): number {
    const scrambled = imul(this.s1, 5);
    const shifted = this.s1 << 9;
    this.s2 ^= this.s0;
    this.s3 ^= this.s1;
    this.s1 ^= this.s2;
    this.s0 ^= this.s3;
    this.s2 ^= shifted;
    this.s3 = (this.s3 << 11) | (this.s3 >>> 21);
    return imul((scrambled << 7) | (scrambled >>> 25), 9) >>> 0;
  }

  nextUniform(): number {
    const high = this.nextUint32() >>> 5;
    const low = this.nextUint32() >>> 6;
    // The last step before 1 would round up to it.
    return min((high * 67108864 + low + 0.5) / 9007199254740992, BELOW_ONE);
  }
}
