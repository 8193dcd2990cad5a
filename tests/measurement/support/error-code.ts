import { MeasurementError } from '../../../api/measurement/errors.js';

/** Runs something that must refuse and gives the code of its refusal; any other outcome fails the test. */
export function errorCode(run: () => unknown): string {
  try {
    run();
  } catch (error) {
    if (error instanceof MeasurementError) return error.code;
    throw error;
  }
  throw new Error('expected a MeasurementError, but nothing was thrown');
}
