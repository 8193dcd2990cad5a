import { requireArgument } from '../distributions/require-domain.js';
import { MeasurementError } from '../errors.js';

/**
 * Probabilities adjusted so that of the findings named at a level at most that share is noise.
 *
 * Formula: p̃_(i) = min over j ≥ i of min(1, m·p_(j)/j), p sorted upwards
 * @param probabilities m p-values in [0, 1] [1]
 * @returns adjusted p-values in the order given [1]
 * @throws MeasurementError 'distributions/out-of-domain' for a p outside [0, 1]
 * @see BENJAMINI-HOCHBERG-1995
 * @example falseDiscoveryAdjusted([0.01, 0.5, 0.02]) // [0.03, 0.5, 0.03]
 */
export function falseDiscoveryAdjusted(probabilities: readonly number[]): number[] {
  probabilities.forEach((p) => {
    requireArgument(p, 'falseDiscoveryAdjusted');
    if (p < 0 || p > 1)
      throw new MeasurementError(
        'distributions/out-of-domain',
        `falseDiscoveryAdjusted: found ${p}, expected 0 ≤ p ≤ 1. Give probabilities.`,
      );
  });
  const m = probabilities.length;
  const order = probabilities.map((_, i) => i).sort((a, b) => probabilities[b]! - probabilities[a]!);
  const adjusted = new Array<number>(m);
  let least = 1;
  order.forEach((i, at) => {
    least = Math.min(least, (m * probabilities[i]!) / (m - at));
    adjusted[i] = least;
  });
  return adjusted;
}
