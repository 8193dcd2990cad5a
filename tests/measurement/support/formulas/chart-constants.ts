import { logGamma } from './log-gamma.js';
import { normalCdf } from '../../../../api/measurement/distributions/normal-distribution.js';
import { MeasurementError } from '../../../../api/measurement/errors.js';
import { integrate } from './integrate.js';

export interface ChartConstants {
  /** mean range of n normal readings, in standard deviations */
  readonly d2: number;
  /** standard deviation of that range */
  readonly d3: number;
  /** mean of s over σ */
  readonly c4: number;
  /** limits of the mean chart from the mean range */
  readonly a2: number;
  /** upper limit of the range chart from the mean range */
  readonly upperD4: number;
}

const REACH = 8;
const STEPS = 320;

/**
 * Constants of control charts for groups of n normal readings.
 *
 * Formula: d₂ = ∫[1 − Φⁿ − (1 − Φ)ⁿ]dx; E(w²) = 2∬_{x<y}[1 − Φ(y)ⁿ − (1 − Φ(x))ⁿ + (Φ(y) − Φ(x))ⁿ]dx dy, d₃ = √(E(w²) − d₂²); c₄ = √(2/(n−1))·Γ(n/2)/Γ((n−1)/2); A₂ = 3/(d₂√n); D₄ = 1 + 3d₃/d₂
 * @param n readings per group, 2 or more [1]
 * @returns d2, d3, c4, a2, upperD4 [1]
 * @throws MeasurementError 'drift/bad-group-size' unless n is a whole number of at least 2
 * @see NIST-EHANDBOOK 6.3.2.1
 * @example chartConstants(2).d2 // 1.1283…
 */
export function chartConstants(n: number): ChartConstants {
  if (!(Number.isInteger(n) && n >= 2)) {
    throw new MeasurementError(
      'drift/bad-group-size',
      `chartConstants: n is ${n}, expected a whole number of at least 2. Group the pulls.`,
    );
  }
  const d2 = integrate((x) => 1 - normalCdf(x) ** n - (1 - normalCdf(x)) ** n, -REACH, REACH, STEPS);
  const d3 = Math.sqrt(meanSquareRange(n) - d2 * d2);
  const c4 = Math.sqrt(2 / (n - 1)) * Math.exp(logGamma(n / 2) - logGamma((n - 1) / 2));
  return { d2, d3, c4, a2: 3 / (d2 * Math.sqrt(n)), upperD4: 1 + (3 * d3) / d2 };
}

function meanSquareRange(n: number): number {
  const tail = (low: number, high: number): number => 1 - high ** n - (1 - low) ** n + (high - low) ** n;
  return (
    2 *
    integrate(
      (y) => {
        const high = normalCdf(y);
        return integrate((x) => tail(normalCdf(x), high), -REACH, y, STEPS);
      },
      -REACH,
      REACH,
      STEPS,
    )
  );
}
