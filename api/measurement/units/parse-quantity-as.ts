import { MeasurementError } from '../errors.js';
import { parseQuantity } from './parse-quantity.js';
import type { ParsedQuantity } from './parse-quantity.js';
import { UNITS } from './unit-table.js';
import type { Dimension } from './unit-table.js';

/**
 * Reads a number and a unit where only one dimension makes sense, and more than zero.
 *
 * Formula: as parseQuantity
 * @param text decimal number with a point [unitSymbol]
 * @param unitSymbol one of the table's symbols
 * @param dimension what is expected to be measured
 * @returns entered text and unit, SI value as a decimal string [siUnit], dimension
 * @throws MeasurementError 'units/wrong-dimension' with the symbols that would fit; 'units/not-positive' unless above 0; and what parseQuantity throws
 * @see NIST-SP-811 appendix B
 * @example parseQuantityAs('0.18', 'mm', 'length') // { text: '0.18', unit: 'mm', si: '0.00018', siUnit: 'm', dimension: 'length' }
 */
export function parseQuantityAs(text: string, unitSymbol: string, dimension: Dimension): ParsedQuantity {
  const parsed = parseQuantity(text, unitSymbol);
  if (parsed.dimension !== dimension) {
    const fitting = Object.entries(UNITS).flatMap(([symbol, unit]) => (unit.dimension === dimension ? [symbol] : []));
    throw new MeasurementError(
      'units/wrong-dimension',
      `parseQuantityAs: found "${parsed.unit}", a unit of ${parsed.dimension}, expected ${dimension} in one of ${fitting.join(', ')}. Correct the unit.`,
    );
  }
  if (Number(parsed.text) <= 0) {
    throw new MeasurementError('units/not-positive', `parseQuantityAs: found ${parsed.text}, expected more than 0. Correct the number.`);
  }
  return parsed;
}
