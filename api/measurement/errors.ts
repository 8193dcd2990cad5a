/** A code of the form room/fact, for example 'measurement/too-few-readings'. */
export type MeasurementErrorCode = `${string}/${string}`;

/**
 * A computation that cannot be done with what it was given.
 * The message says where, what was found, what was expected and what to do; the code is stable and safe to test for.
 */
export class MeasurementError extends Error {
  readonly code: MeasurementErrorCode;

  constructor(code: MeasurementErrorCode, message: string) {
    super(message);
    this.name = 'MeasurementError';
    this.code = code;
  }
}
