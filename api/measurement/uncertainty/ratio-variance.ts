import type { OwnVariance } from '../consensus/moderated-variances.js';

/**
 * Relative variance of a ratio of two independent means.
 *
 * Formula: u_r² = u_a² + u_b², to first order; ν = u_r⁴/(u_a⁴/ν_a + u_b⁴/ν_b)
 * @param above relative variance of the numerator [1] with its degrees of freedom
 * @param below relative variance of the denominator [1] with its degrees of freedom
 * @returns relative variance [1] with its effective degrees of freedom
 * @throws nothing
 * @see JCGM-100 5.1.6 and G.4.1
 * @example ratioVariance({ variance: 1e-4, degreesOfFreedom: 4 }, { variance: 1e-4, degreesOfFreedom: 4 }) // { variance: 2e-4, degreesOfFreedom: 8 }
 */
export function ratioVariance(above: OwnVariance, below: OwnVariance): OwnVariance {
  const variance = above.variance + below.variance;
  const welch = above.variance ** 2 / above.degreesOfFreedom + below.variance ** 2 / below.degreesOfFreedom;
  return { variance, degreesOfFreedom: welch === 0 ? Infinity : variance ** 2 / welch };
}
