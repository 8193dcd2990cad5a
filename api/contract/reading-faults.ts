/** What is wrong between the readings of one specimen. Pure. */
import { MeasurementError } from '../measurement/errors.js';
import { findUnit } from '../measurement/units/find-unit.js';
import { unitMeant } from '../measurement/units/unit-meant.js';
import { parseQuantity } from '../measurement/units/parse-quantity.js';
import { UNITS } from '../measurement/units/unit-table.js';
import type { Dimension } from '../measurement/units/unit-table.js';

interface EnteredReading {
  readonly role: string;
  readonly station: number | null;
  readonly value: string;
  readonly unit: string;
}

/** A reading that is at fault, by its index. */
export interface ReadingFault {
  readonly index: number;
  readonly message: string;
}

/**
 * @param reading what was read, in words
 * @returns a sentence with the symbols that fit, or null when the unit is one of them
 */
export function unitFault(reading: string, unit: string, dimension: Dimension): string | null {
  if (orNull(() => UNITS[findUnit(unit)].dimension) === dimension) return null;
  const symbols = Object.entries(UNITS).flatMap(([symbol, known]) => (known.dimension === dimension ? [symbol] : []));
  return `Found "${unit}"; a ${reading} is a ${dimension}: ${symbols.join(', ')}${unitMeant(unit).replace(/^ (.*)\.$/, '. $1')}`;
}

/** Readings that stand twice for the same role and station. */
export function repeatedReadings(readings: readonly EnteredReading[]): ReadingFault[] {
  const seen = new Set<string>();
  return readings.flatMap(({ role, station }, index) => {
    const key = station === null ? role : `${role} at station ${station}`;
    if (seen.has(key)) return [{ index, message: `The specimen has ${key} twice; remove one` }];
    seen.add(key);
    return [];
  });
}

/** Narrowest readings that are above the widest of the same station, whatever their units. */
export function narrowAboveWide(readings: readonly EnteredReading[]): ReadingFault[] {
  const wideAt = new Map(readings.filter(({ role }) => role === 'wideDiameter').map((wide) => [wide.station, wide]));
  return readings.flatMap((narrow, index) => {
    if (narrow.role !== 'narrowDiameter') return [];
    const wide = wideAt.get(narrow.station);
    if (!wide) return [];
    const [wideM, narrowM] = [wide, narrow].map(({ value, unit }) => orNull(() => Number(parseQuantity(value, unit).si)) ?? Number.NaN);
    if (wideM === undefined || narrowM === undefined || !(narrowM > wideM)) return [];
    const words = `the narrowest, ${narrow.value} ${narrow.unit}, is above the widest, ${wide.value} ${wide.unit}`;
    return [{ index, message: `At station ${narrow.station ?? 'none'} ${words}; exchange or repeat the readings` }];
  });
}

function orNull<Answer>(read: () => Answer): Answer | null {
  try {
    return read();
  } catch (error) {
    if (error instanceof MeasurementError) return null;
    throw error;
  }
}
