import { MeasurementError } from '../measurement/errors.js';
import { parseQuantityAs } from '../measurement/units/parse-quantity-as.js';
import type { InputFault } from '../platform/errors/problem.js';

export interface ForceReading {
  readonly enteredText: string;
  readonly enteredUnit: string;
  /** [N] */
  readonly valueSi: string;
}

/** A breaking force as displayed → in N beside it, or the fault with its place in `readings`. */
export function readForce({ text, unit }: { text: string; unit: string }, index: number): ForceReading | { readonly fault: InputFault } {
  try {
    const force = parseQuantityAs(text, unit, 'force');
    return { enteredText: force.text, enteredUnit: force.unit, valueSi: force.si };
  } catch (error) {
    if (!(error instanceof MeasurementError)) throw error;
    return { fault: { pointer: `/readings/${index}`, detail: error.inWords, code: error.code } };
  }
}
