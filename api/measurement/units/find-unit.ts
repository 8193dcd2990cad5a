import { MeasurementError } from '../errors.js';
import { unitMeant } from './unit-meant.js';
import { UNITS } from './unit-table.js';
import type { UnitSymbol } from './unit-table.js';

// The Greek letter mu and the micro sign look alike and both stand for "micro"; the degree signs below are one character for two.
const SAME_SYMBOL: Record<string, UnitSymbol> = { '\u03bcm': 'µm', '\u2103': '°C', '\u2109': '°F' };

/**
 * Finds a unit by its symbol as entered; upper and lower case count, and nothing is guessed.
 *
 * Formula: none, a table look-up
 * @param symbol unit symbol as entered
 * @returns the symbol as the table writes it
 * @throws MeasurementError 'units/unknown-symbol', with the known symbols, for any other text
 * @see NIST-SP-811
 * @example findUnit('lbf') // 'lbf'
 */
export function findUnit(symbol: string): UnitSymbol {
  const trimmed = symbol.trim();
  const canonical = SAME_SYMBOL[trimmed] ?? trimmed;
  if (Object.hasOwn(UNITS, canonical)) return canonical as UnitSymbol;
  throw new MeasurementError(
    'units/unknown-symbol',
    `findUnit: found the unit "${trimmed.slice(0, 40)}", expected one of ${Object.keys(UNITS).join(', ')}. Write the unit as one of these.${unitMeant(trimmed)}`,
  );
}
