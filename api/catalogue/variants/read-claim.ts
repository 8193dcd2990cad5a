import { MeasurementError } from '../../measurement/errors.js';
import { parseQuantityAs } from '../../measurement/units/parse-quantity-as.js';
import type { ClaimedQuantity, Printed } from '../../contract/claims.js';
import type { InputFault } from '../../platform/errors/problem.js';

/** Unit of a PE number (gō), which is a place on a scale and has no SI unit. */
const PE_UNIT = 'PE';

const DIMENSION_OF_QUANTITY = { breakingForce: 'force', diameter: 'length', linearDensity: 'linearDensity' } as const;

/** SI unit that each quantity is kept in. */
export const SI_UNIT_OF_QUANTITY = { breakingForce: 'N', diameter: 'm', linearDensity: 'kg/m', peNumber: PE_UNIT } as const;

/**
 * Reads what a label prints.
 * @param quantity what is claimed
 * @param printed number and unit as printed
 * @returns exact value in SI (N, m, kg/m; the number itself for a PE number), or what is wrong, pointing into "printed"
 */
export function readClaim(quantity: ClaimedQuantity, printed: Printed): { valueSi: string } | InputFault {
  try {
    return {
      valueSi:
        quantity === 'peNumber' ? readPeNumber(printed) : parseQuantityAs(printed.text, printed.unit, DIMENSION_OF_QUANTITY[quantity]).si,
    };
  } catch (error) {
    if (!(error instanceof MeasurementError)) throw error;
    const isUnit = error.code === 'units/unknown-symbol' || error.code === 'units/wrong-dimension';
    return { pointer: isUnit ? '/printed/unit' : '/printed/text', detail: error.inWords, code: error.code };
  }
}

function readPeNumber({ text, unit }: Printed): string {
  if (unit !== PE_UNIT)
    throw new MeasurementError(
      'units/wrong-dimension',
      `A PE number: found the unit "${unit}", expected "${PE_UNIT}". Correct the unit or the quantity.`,
    );
  if (Number(text) === 0)
    throw new MeasurementError('units/not-positive', `A PE number: found ${text}, expected more than 0. Correct the number.`);
  return text;
}
