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

  /** The message without the name of the function, for whoever typed the input. */
  get inWords(): string {
    const words = this.message.replace(/^[a-z]\w*: /, '');
    return words.charAt(0).toUpperCase() + words.slice(1);
  }
}
