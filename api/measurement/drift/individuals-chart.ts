import { mean } from '../summary/mean.js';
import { requireReadings } from '../summary/require-readings.js';
import { D2, movingRangeLimit } from './moving-range-limit.js';

/** Centre line and standard deviation of a chart. */
export interface ControlLimits {
  readonly centre: number;
  readonly sigma: number;
}

export interface IndividualsChart extends ControlLimits {
  readonly meanMovingRange: number;
  readonly low: number;
  readonly high: number;
  readonly movingRangeHigh: number;
}

/**
 * Individuals and moving-range chart of a control line, from pulls that were in control.
 *
 * Formula: centre = x̄, σ = MR̄/d₂, limits x̄ ± 3σ; moving range at most D₄·MR̄; d₂ = 2/√π, D₄ = 3.267
 * @param values n ≥ 2 control pulls in the order of pulling [any one unit]
 * @returns centre, sigma, meanMovingRange and limits [same unit]; sigma 0 when all pulls are equal
 * @throws MeasurementError 'measurement/too-few-readings' for n < 2; 'measurement/not-a-number'
 * @see NIST-EHANDBOOK 6.3.2.2
 * @example individualsChart([10, 11, 10, 11]).high // 13.15…
 */
export function individualsChart(values: readonly number[]): IndividualsChart {
  requireReadings(values, 2, 'individualsChart');
  const centre = mean(values);
  const meanMovingRange = mean(values.slice(1).map((value, i) => Math.abs(value - values[i]!)));
  const sigma = meanMovingRange / D2;
  return {
    centre,
    sigma,
    meanMovingRange,
    low: centre - 3 * sigma,
    high: centre + 3 * sigma,
    movingRangeHigh: movingRangeLimit(sigma),
  };
}
