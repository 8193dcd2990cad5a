import { MeasurementError } from '../measurement/errors.js';
import { parseQuantityAs } from '../measurement/units/parse-quantity-as.js';
import type { ParsedQuantity } from '../measurement/units/parse-quantity.js';
import type { Dimension } from '../measurement/units/unit-table.js';
import type { InputFault } from '../platform/errors/problem.js';

/** What the range and the resolution of each kind are stated in; an abrader's is the load of its tensioning weight. */
export const DIMENSION_OF_KIND = {
  forceGauge: 'force',
  loadFrame: 'force',
  micrometer: 'length',
  opticalGauge: 'length',
  balance: 'mass',
  lengthMeasure: 'length',
  abrader: 'force',
} as const satisfies Record<string, Dimension>;

export type InstrumentKind = keyof typeof DIMENSION_OF_KIND;

export const INSTRUMENT_KINDS = Object.keys(DIMENSION_OF_KIND) as [InstrumentKind, ...InstrumentKind[]];

export interface Entered {
  readonly text: string;
  readonly unit: string;
}

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
    return { fault: { pointer: `${pointer}/${isUnit ? 'unit' : 'text'}`, detail: error.message, code: error.code } };
  }
}
