import { MeasurementError } from '../errors.js';
import { mean } from '../summary/mean.js';
import { requirePositive } from './require-positive.js';

/** The widest and the narrowest reading at one place along the line. */
export interface DiameterStation {
  wideMm: number;
  narrowMm: number;
}

/**
 * Mean diameter of a line over its stations.
 *
 * Formula: d̄ = mean over stations of (w + n)/2
 * @param stations one or more stations, each with w ≥ n > 0 [mm]
 * @returns d̄ [mm]
 * @throws MeasurementError 'measurement/too-few-readings' for none; 'figures/not-positive'; 'figures/wide-below-narrow'
 * @see COMMON-PRACTICE
 * @example diameterMm([{ wideMm: 0.27, narrowMm: 0.23 }]) // 0.25
 */
export function diameterMm(stations: readonly DiameterStation[]): number {
  requireStations(stations, 'diameterMm');
  return mean(stations.map(({ wideMm, narrowMm }) => (wideMm + narrowMm) / 2));
}

/**
 * Mean out-of-roundness of a line over its stations.
 *
 * Formula: mean over stations of 100 (w − n)/((w + n)/2)
 * @param stations one or more stations, each with w ≥ n > 0 [mm]
 * @returns out-of-roundness [%]
 * @throws MeasurementError 'measurement/too-few-readings' for none; 'figures/not-positive'; 'figures/wide-below-narrow'
 * @see COMMON-PRACTICE
 * @example outOfRoundnessPercent([{ wideMm: 0.3, narrowMm: 0.1 }]) // 100
 */
export function outOfRoundnessPercent(stations: readonly DiameterStation[]): number {
  requireStations(stations, 'outOfRoundnessPercent');
  return mean(stations.map(({ wideMm, narrowMm }) => (100 * (wideMm - narrowMm)) / ((wideMm + narrowMm) / 2)));
}

/**
 * Refuses stations whose readings are not positive or the wrong way round.
 *
 * Formula: w ≥ n > 0 at each station
 * @param stations stations, none of them is for the mean to refuse [mm]
 * @param where name of the calling function, for the message
 * @returns nothing
 * @throws MeasurementError 'figures/not-positive'; 'figures/wide-below-narrow'
 * @see COMMON-PRACTICE
 * @example requireStations([{ wideMm: 0.27, narrowMm: 0.23 }], 'diameterMm')
 */
export function requireStations(stations: readonly DiameterStation[], where: string): void {
  stations.forEach(({ wideMm, narrowMm }, i) => {
    requirePositive(wideMm, `wideMm of station ${i + 1}`, where);
    requirePositive(narrowMm, `narrowMm of station ${i + 1}`, where);
    if (wideMm < narrowMm) {
      throw new MeasurementError(
        'figures/wide-below-narrow',
        `${where}: station ${i + 1} has a widest reading of ${wideMm} mm below its narrowest of ${narrowMm} mm. Swap or repeat the readings.`,
      );
    }
  });
}
