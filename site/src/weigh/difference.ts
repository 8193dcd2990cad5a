import { normalCdf } from '../../../api/measurement/distributions/normal-distribution.js';

/** A published value with its 95 % interval. */
export interface Interval {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** A 95 % interval reaches so many standard deviations to each side (ISO 3534-1, normal distribution). */
const REACH = 1.959964;

/**
 * Difference of two values from their published intervals alone, as Zou and Donner recover it (Statistics in Medicine 27, 2008, 1693):
 * L = d − √((x − l₁)² + (u₂ − y)²), U = d + √((u₁ − x)² + (y − l₂)²) with d = x − y.
 * @returns the difference with its 95 % interval, and the chance [0 to 1] that it is above 0
 */
export function differenceOf(one: Interval, other: Interval): Interval & { readonly chance: number } {
  const value = one.value - other.value;
  const low = value - Math.hypot(one.value - one.low, other.high - other.value);
  const high = value + Math.hypot(one.high - one.value, other.value - other.low);
  // The side that the difference would have to cross decides, so that the chance is 97.5 % where the interval ends at 0.
  const side = value >= 0 ? value - low : high - value;
  return { value, low, high, chance: side === 0 ? 0.5 + Math.sign(value) / 2 : normalCdf((REACH * value) / side) };
}
