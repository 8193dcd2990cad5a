import { MeasurementError } from '../measurement/errors.js';
import { parseQuantity } from '../measurement/units/parse-quantity.js';
import { UNITS } from '../measurement/units/unit-table.js';
import type { Dimension } from '../measurement/units/unit-table.js';

export const CLAIMED_QUANTITIES = ['breakingForce', 'diameter', 'linearDensity', 'peNumber'] as const;
export type ClaimedQuantity = (typeof CLAIMED_QUANTITIES)[number];
export const CLAIM_BASES = ['average', 'minimum', 'maximum', 'class', 'notStated'] as const;
export type ClaimBasis = (typeof CLAIM_BASES)[number];

/** Unit of a PE number (gō), which is a number on a scale and has no SI unit. */
export const PE_UNIT = 'PE';

const DIMENSION_OF_QUANTITY = { breakingForce: 'force', diameter: 'length', linearDensity: 'linearDensity' } as const satisfies Record<
  Exclude<ClaimedQuantity, 'peNumber'>,
  Dimension
>;

export interface Printed {
  readonly text: string;
  readonly unit: string;
}

/** Which half of the printed number is wrong, and how. */
export interface PrintedFault {
  readonly field: keyof Printed;
  readonly detail: string;
}

/**
 * Reads what a label prints.
 * @param quantity what is claimed
 * @param printed number and unit as printed; the number is a plain decimal
 * @returns exact value in SI (N, m, kg/m; the number itself for a PE number), or the fault
 */
export function readClaim(quantity: ClaimedQuantity, printed: Printed): { valueSi: string } | PrintedFault {
  if (Number(printed.text) === 0) return { field: 'text', detail: `Found ${printed.text}, expected more than 0.` };
  if (quantity === 'peNumber') {
    return printed.unit === PE_UNIT
      ? { valueSi: printed.text }
      : { field: 'unit', detail: `Found "${printed.unit}", expected "${PE_UNIT}" for a PE number.` };
  }
  const dimension = DIMENSION_OF_QUANTITY[quantity];
  try {
    const parsed = parseQuantity(printed.text, printed.unit);
    return parsed.dimension === dimension
      ? { valueSi: parsed.si }
      : { field: 'unit', detail: wrongDimension(quantity, printed.unit, dimension) };
  } catch (error) {
    if (!(error instanceof MeasurementError)) throw error;
    return { field: error.code === 'units/unknown-symbol' ? 'unit' : 'text', detail: error.message };
  }
}

function wrongDimension(quantity: ClaimedQuantity, unit: string, dimension: Dimension): string {
  const known = Object.entries(UNITS).flatMap(([symbol, { dimension: measured }]) => (measured === dimension ? [symbol] : []));
  return `Found "${unit}" for ${quantity}, expected one of ${known.join(', ')}. Correct the unit or the quantity.`;
}
