import { mean } from '../summary/mean.js';
import { median } from '../summary/median.js';
import { requireReadings } from '../summary/require-readings.js';
import { standardDeviation } from '../summary/standard-deviation.js';

export interface RobustMean {
  /** x* */
  readonly mean: number;
  /** s* */
  readonly sd: number;
  /** mean and sd at the start and after each round, the last ones being the result */
  readonly rounds: readonly (readonly [mean: number, sd: number])[];
}

const MAD_TO_SD = 1.483;
const WINSORISED_TO_SD = 1.134;
const WINSORISE_AT = 1.5;
const MOST_ROUNDS = 1000;

/**
 * Robust mean and standard deviation, to which far values count as far and no farther.
 *
 * Formula: start x* = median, s* = 1.483·MAD; values beyond x* ± 1.5 s* are moved there; x* = their mean, s* = 1.134·their sd; until both stand still
 * @param values n ≥ 2 values, for example the means of testers [any one unit]
 * @returns mean, sd [same unit] and the rounds; sd is 0 when more than half of the values are equal
 * @throws MeasurementError 'measurement/too-few-readings' for n < 2; 'measurement/not-a-number'
 * @see ISO-13528 annex C, algorithm A
 * @example algorithmA([9, 10, 11, 10, 50]).mean // 10.97…
 */
export function algorithmA(values: readonly number[]): RobustMean {
  requireReadings(values, 2, 'algorithmA');
  let centre = median(values);
  let sd = MAD_TO_SD * median(values.map((value) => Math.abs(value - centre)));
  const rounds: [number, number][] = [[centre, sd]];
  for (let i = 0; i < MOST_ROUNDS; i++) {
    const [low, high] = [centre - WINSORISE_AT * sd, centre + WINSORISE_AT * sd];
    const moved = values.map((value) => Math.min(high, Math.max(low, value)));
    const [before, sdBefore] = [centre, sd];
    centre = mean(moved);
    sd = WINSORISED_TO_SD * standardDeviation(moved);
    rounds.push([centre, sd]);
    if (Math.abs(centre - before) <= 1e-12 * sd && Math.abs(sd - sdBefore) <= 1e-12 * sd) break;
  }
  return { mean: centre, sd, rounds };
}
