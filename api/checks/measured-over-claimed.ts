import type { ReadingRole } from '../contract/submission-content.js';
import type { CheckInput } from './check-input.js';

/** A measured quantity against each claim of the label. */
export interface MeasuredOverClaimed {
  readonly quantity: string;
  readonly words: string;
  /** Measured over claimed [1], one for each claim of the quantity. */
  readonly ratios: readonly number[];
  /** Counted specimens that it was read on. */
  readonly specimens: readonly number[];
}

/** Breaking force, diameter and linear density where both measured and claimed. */
export function measuredOverClaimed({
  figures,
  variant,
  specimens,
}: Pick<CheckInput, 'figures' | 'variant' | 'specimens'>): MeasuredOverClaimed[] {
  const { breakingForceN, diameterMm, linearDensityTex } = figures;
  const measured: [quantity: string, words: string, role: ReadingRole, valueSi: number | undefined][] = [
    ['breakingForce', 'breaking force', 'breakingForce', breakingForceN?.mean],
    ['diameter', 'diameter', 'wideDiameter', diameterMm ? diameterMm.mean / 1e3 : undefined],
    ['linearDensity', 'linear density', 'mass', linearDensityTex ? linearDensityTex.mean / 1e6 : undefined],
  ];
  return measured.flatMap(([quantity, words, role, valueSi]) => {
    const claims = variant.claims.filter((claim) => claim.quantity === quantity);
    if (valueSi === undefined || claims.length === 0) return [];
    const read = specimens.filter(({ state, readings }) => state === 'valid' && readings.some((reading) => reading.role === role));
    return [
      { quantity, words, ratios: claims.map((claim) => valueSi / Number(claim.valueSi)), specimens: read.map(({ number }) => number) },
    ];
  });
}
