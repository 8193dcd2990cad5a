import { requirePositive } from '../../../../api/measurement/figures/require-positive.js';

export interface SamplingLoss {
  maxMissedN: number;
  meanMissedN: number;
}

/**
 * Force that a sampled record can miss when the line breaks between two samples.
 *
 * Formula: max = slope/rate; mean = half of it for a break at any instant alike
 * @param rampNPerS slope of the force before the break, above 0 [N/s]
 * @param sampleRateHz samples per second, above 0 [Hz]
 * @returns maxMissedN, meanMissedN [N]
 * @throws MeasurementError 'figures/not-positive' unless both are finite and above 0
 * @see MECHANICS
 * @example samplingLoss(50, 10) // { maxMissedN: 5, meanMissedN: 2.5 }
 */
export function samplingLoss(rampNPerS: number, sampleRateHz: number): SamplingLoss {
  requirePositive(rampNPerS, 'rampNPerS', 'samplingLoss');
  requirePositive(sampleRateHz, 'sampleRateHz', 'samplingLoss');
  const maxMissedN = rampNPerS / sampleRateHz;
  return { maxMissedN, meanMissedN: maxMissedN / 2 };
}
