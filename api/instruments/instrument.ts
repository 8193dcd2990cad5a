import { MeasurementError } from '../measurement/errors.js';
import { parseQuantityAs } from '../measurement/units/parse-quantity-as.js';
import type { ParsedQuantity } from '../measurement/units/parse-quantity.js';
import { DIMENSION_OF_KIND } from '../contract/instrument-kinds.js';
import type { Entered, InstrumentKind } from '../contract/instrument-kinds.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { InputFault } from '../platform/errors/problem.js';

/** One half of a range, read; or what is wrong with it. */
export type ReadQuantity = { readonly quantity: ParsedQuantity } | { readonly fault: InputFault };

/**
 * Reads a capacity or a resolution in the dimension of its kind.
 * @param kind kind of instrument
 * @param entered number and unit as entered
 * @param pointer place of the quantity in the input
 * @returns exact value in SI (N, m or kg), or the fault
 */
export function readRange(kind: InstrumentKind, entered: Entered, pointer: string): ReadQuantity {
  try {
    return { quantity: parseQuantityAs(entered.text, entered.unit, DIMENSION_OF_KIND[kind]) };
  } catch (error) {
    if (!(error instanceof MeasurementError)) throw error;
    const isUnit = error.code === 'units/unknown-symbol' || error.code === 'units/wrong-dimension';
    return { fault: { pointer: `${pointer}/${isUnit ? 'unit' : 'text'}`, detail: error.inWords, code: error.code } };
  }
}

export const instrumentNotOnRecord = (code: string): Problem =>
  new Problem(platformProblems['request/not-found'], `No instrument "${code}" is on record. Look it up in the list.`);
