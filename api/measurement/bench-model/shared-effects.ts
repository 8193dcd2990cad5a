import type { Spreads } from './bench-series.js';
import type { Design } from './design.js';
import type { SubmissionLevel } from './submission-level.js';

/** Effects of rigs, testers and certificates for one set of spreads. */
export interface SharedEffects {
  /** K best linear unbiased predictions [1] */
  readonly effects: Float64Array;
  /** K·K, row-wise: F with FF′ the covariance of the effects about their predictions */
  readonly factor: Float64Array;
  /** restricted log-likelihood with all its constants */
  readonly logLikelihood: number;
}

/**
 * Standard deviation of every shared effect for one set of spreads.
 *
 * Formula: σ_rig, σ_tester, or what the certificate states
 * @param design series
 * @param spreads of the causes [1]
 * @returns K standard deviations [1]
 * @throws nothing
 * @see SEARLE-1992
 * @example [...columnSds(designOf(series), { rig: 0.01, tester: 0.02, submission: 0 })] // [0.01, 0.02, 0.02]
 */
export function columnSds(design: Design, spreads: Spreads): Float64Array {
  return Float64Array.from(design.columns, ({ kind, knownSd }) => (kind === 'certificate' ? knownSd : spreads[kind]));
}

/**
 * Restricted likelihood of a set of spreads.
 *
 * Formula: −½(ν ln 2π + ln|D| + ln|X′D⁻¹X| + ln|I + SMS| + y′Py), ν rows less variants, y′Py = Σwr² − q′S(I + SMS)⁻¹Sq
 * @param level reduced series
 * @param sds K standard deviations of the shared effects [1]
 * @param factor K·K room: takes the Cholesky factor of I + SMS
 * @param effects K room: takes L⁻¹Sq
 * @param contrasts ν [1]
 * @returns ln L
 * @throws nothing
 * @see PATTERSON-THOMPSON-1971
 * @see WOODBURY-1950
 * @example restrictedLikelihood(level, Float64Array.of(0, 0, 0), new Float64Array(9), new Float64Array(3), 0)
 */
export function restrictedLikelihood(
  level: SubmissionLevel,
  sds: Float64Array,
  factor: Float64Array,
  effects: Float64Array,
  contrasts: number,
): number {
  const { m, q, squares, logDeterminant } = level;
  const k = sds.length;
  let [logs, explained] = [0, 0];
  for (let i = 0; i < k; i++) {
    let right = sds[i]! * q[i]!;
    for (let j = 0; j <= i; j++) {
      let sum = (i === j ? 1 : 0) + sds[i]! * sds[j]! * m[i * k + j]!;
      for (let l = 0; l < j; l++) sum -= factor[i * k + l]! * factor[j * k + l]!;
      factor[i * k + j] = i === j ? Math.sqrt(Math.max(sum, Number.MIN_VALUE)) : sum / factor[j * k + j]!;
    }
    for (let l = 0; l < i; l++) right -= factor[i * k + l]! * effects[l]!;
    effects[i] = right / factor[i * k + i]!;
    explained += effects[i]! * effects[i]!;
    logs += 2 * Math.log(factor[i * k + i]!);
  }
  return -0.5 * (contrasts * Math.log(2 * Math.PI) + logDeterminant + logs + squares - explained);
}

/**
 * Best linear unbiased prediction of the shared effects, with their covariance.
 *
 * Formula: b̂ = S(I + SMS)⁻¹Sq; covariance S(I + SMS)⁻¹S = FF′, F = SL⁻ᵀ
 * @param level reduced series
 * @param sds K standard deviations of the shared effects [1]
 * @param contrasts rows less variants [1]
 * @returns predictions [1], F and ln L
 * @throws nothing
 * @see ROBINSON-1991
 * @example sharedEffects(level, Float64Array.of(0, 0, 0), 0).effects // [0, 0, 0]
 */
export function sharedEffects(level: SubmissionLevel, sds: Float64Array, contrasts: number): SharedEffects {
  const k = sds.length;
  const lower = new Float64Array(k * k);
  const effects = new Float64Array(k);
  const logLikelihood = restrictedLikelihood(level, sds, lower, effects, contrasts);
  const factor = new Float64Array(k * k);
  for (let column = 0; column < k; column++) {
    for (let i = column; i >= 0; i--) {
      let sum = i === column ? 1 : 0;
      for (let l = i + 1; l <= column; l++) sum -= lower[l * k + i]! * factor[l * k + column]!;
      factor[i * k + column] = sum / lower[i * k + i]!;
    }
  }
  const scaled = new Float64Array(k);
  for (let i = 0; i < k; i++) {
    let sum = 0;
    for (let column = i; column < k; column++) {
      sum += factor[i * k + column]! * effects[column]!;
      factor[i * k + column] = factor[i * k + column]! * sds[i]!;
    }
    scaled[i] = sds[i]! * sum;
  }
  return { effects: scaled, factor, logLikelihood };
}
