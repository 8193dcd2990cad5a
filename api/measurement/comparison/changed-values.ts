import { tCdf } from '../distributions/t-distribution.js';
import { falseDiscoveryAdjusted } from './false-discovery.js';

/** A value with its standard uncertainty, all that it shares with others included. */
export interface KnownValue {
  /** above 0 [any one unit] */
  readonly value: number;
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
}

/** Share of noise among the changes that a table names. */
const MOST_NOISE = 0.05;

/**
 * Which values of a table changed between two editions: of the changes named at most one in twenty is noise.
 *
 * Formula: t = ln(x/x′)/√(u²/x² + u′²/x′²), ν by Welch and Satterthwaite; changed where Benjamini and Hochberg's adjusted p ≤ 0.05
 * @param pairs the value of each entry now and before [any one unit]
 * @returns whether each changed
 * @throws nothing: values without uncertainty change by any difference
 * @see WELCH-1947
 * @see BENJAMINI-HOCHBERG-1995
 * @example changedValues([{ now: { value: 120, standardUncertainty: 1, degreesOfFreedom: 9 }, before: { value: 100, standardUncertainty: 1, degreesOfFreedom: 9 } }]) // [true]
 */
export function changedValues(pairs: readonly { readonly now: KnownValue; readonly before: KnownValue }[]): boolean[] {
  return falseDiscoveryAdjusted(pairs.map(({ now, before }) => probabilityOf(now, before))).map((adjusted) => adjusted <= MOST_NOISE);
}

function probabilityOf(now: KnownValue, before: KnownValue): number {
  const [mine, theirs] = [now, before].map(({ value, standardUncertainty }) => (standardUncertainty / value) ** 2) as [number, number];
  const difference = Math.abs(Math.log(now.value / before.value));
  if (mine + theirs === 0) return difference === 0 ? 1 : 0;
  const degreesOfFreedom = (mine + theirs) ** 2 / (mine ** 2 / now.degreesOfFreedom + theirs ** 2 / before.degreesOfFreedom);
  return 2 * tCdf(-difference / Math.sqrt(mine + theirs), Math.min(1e6, degreesOfFreedom));
}
