/** Ratios that mixing up two units leaves behind. */
const PAIRS = [
  [2.2046, 'kilograms and pounds (kgf, lbf)'],
  [4.448, 'pounds-force and newtons'],
  [9.80665, 'kilograms-force and newtons'],
  [25.4, 'inches and millimetres'],
] as const;

export interface UnitFactor {
  readonly factor: number;
  /** The two units. */
  readonly words: string;
}

/** Each ratio and its inverse. */
export const UNIT_FACTORS: readonly UnitFactor[] = PAIRS.flatMap(([factor, words]) => [
  { factor, words },
  { factor: 1 / factor, words },
]);

/** @returns the factor that a ratio lies within so many per cent of; undefined when there is none */
export const unitFactorNear = (ratio: number, percent: number): UnitFactor | undefined =>
  UNIT_FACTORS.find(({ factor }) => Math.abs(ratio / factor - 1) <= percent / 100);

/**
 * A factor that several ratios share, though each has its own part beside it: their geometric mean lies near it, and each of them
 * lies nearer to it than to one.
 */
export function commonUnitFactor(ratios: readonly number[], percent: number): UnitFactor | undefined {
  const middle = Math.exp(ratios.reduce((sum, ratio) => sum + Math.log(ratio), 0) / ratios.length);
  const near = unitFactorNear(middle, percent);
  return near && ratios.every((ratio) => Math.abs(Math.log(ratio / near.factor)) < Math.abs(Math.log(ratio))) ? near : undefined;
}
