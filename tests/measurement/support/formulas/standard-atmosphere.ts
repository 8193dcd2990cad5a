/** Standard atmospheres for conditioning and testing, with inclusive limits; figures from memory. */
export const STANDARD_ATMOSPHERES = {
  standard: { temperatureC: 20, temperatureToleranceC: 2, humidityPercent: 65, humidityTolerancePercent: 4 },
  alternative: { temperatureC: 23, temperatureToleranceC: 2, humidityPercent: 50, humidityTolerancePercent: 4 },
} as const;

/**
 * Tells whether an observed climate lies within a standard atmosphere, limits included.
 *
 * Formula: |T − T₀| ≤ 2 °C and |RH − RH₀| ≤ 4 %
 * @param temperatureC T [°C]
 * @param relativeHumidityPercent RH [%]
 * @param atmosphere 'standard' (20 °C, 65 %) or 'alternative' (23 °C, 50 %)
 * @returns whether both are within; false for NaN
 * @throws nothing: an observation that is no number is outside
 * @see ISO-139
 * @example isInStandardAtmosphere(20, 65, 'standard') // true
 */
export function isInStandardAtmosphere(
  temperatureC: number,
  relativeHumidityPercent: number,
  atmosphere: keyof typeof STANDARD_ATMOSPHERES,
): boolean {
  const limits = STANDARD_ATMOSPHERES[atmosphere];
  // A billionth of slack keeps a reading such as 60.999999999999996 on the limit that it was entered at.
  const isWithin = (value: number, centre: number, tolerance: number): boolean => Math.abs(value - centre) <= tolerance + 1e-9;
  return (
    isWithin(temperatureC, limits.temperatureC, limits.temperatureToleranceC) &&
    isWithin(relativeHumidityPercent, limits.humidityPercent, limits.humidityTolerancePercent)
  );
}
