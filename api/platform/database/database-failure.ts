interface DriverCause {
  readonly kind?: string;
  readonly originalCode?: string;
  readonly originalMessage?: string;
}

interface FailureShape {
  readonly name?: string;
  readonly code?: string;
  readonly message?: string;
  readonly cause?: DriverCause;
  readonly meta?: { readonly driverAdapterError?: { readonly cause?: DriverCause } };
}

const causeOf = (error: unknown): DriverCause => {
  const failure = error as FailureShape;
  return failure.meta?.driverAdapterError?.cause ?? failure.cause ?? {};
};

/** Whether the same transaction may simply be tried again: serialisation failure, deadlock, write conflict. */
export function isRetryable(error: unknown): boolean {
  const cause = causeOf(error);
  const code = (error as FailureShape).code;
  return code === 'P2034' || cause.kind === 'TransactionWriteConflict' || cause.originalCode === '40001' || cause.originalCode === '40P01';
}

/** Whether somebody else held what was needed for too long: lock_timeout, or statement_timeout. */
export function isBusy(error: unknown): boolean {
  const cause = causeOf(error);
  return ['55P03', '57014'].includes(cause.originalCode ?? '') || (error as FailureShape).code === 'P2028';
}

/** Whether a value is none that a column can hold: NUL in a text, an id that is no UUID, a number beyond its type. */
export function isUnstorable(error: unknown): boolean {
  const code = causeOf(error).originalCode ?? '';
  return ['22021', '22P05', '22P02', '22003'].includes(code) || (error as FailureShape).code === 'P2023';
}

const UNREACHABLE = ['P1001', 'P1002', 'P1008', 'P1017', 'P2024', 'ECONNREFUSED', 'ECONNRESET', '57P01', '57P02', '57P03', '55000'];

/** The driver's own words, without a code: no connection became free, or was made, in time; one broke, or fell silent. */
const OF_THE_DRIVER = [
  'timeout exceeded when trying to connect',
  'Connection terminated due to connection timeout',
  'Connection terminated unexpectedly',
  'timeout expired',
  'Query read timeout',
];

/** Whether the database could not be reached, or let no connection in. */
export function isUnreachable(error: unknown): boolean {
  const { code = '', message } = error as FailureShape;
  if (OF_THE_DRIVER.includes(message ?? '')) return true;
  const { kind = '', originalCode = '' } = causeOf(error);
  const kinds = ['DatabaseNotReachable', 'ConnectionClosed', 'SocketTimeout', 'TooManyConnections'];
  return UNREACHABLE.includes(code) || UNREACHABLE.includes(originalCode) || kinds.includes(kind);
}

/** Whether the database answers and takes no changes: set to read only, on standby, or its disk is full. */
export function isFrozen(error: unknown): boolean {
  return ['25006', '53100'].includes(causeOf(error).originalCode ?? '');
}

/** Sentence of a rule of the record that was broken (trigger with SQLSTATE FP001, or check constraint), else null. */
export function brokenRule(error: unknown): string | null {
  const cause = causeOf(error);
  const message = cause.originalMessage ?? (error as FailureShape).message ?? '';
  if (cause.originalCode === 'FP001') return message;
  if (cause.originalCode === '23514' || (error as FailureShape).code === 'P2039')
    return /constraint "([^"]+)"/.exec(message)?.[1] ?? message;
  return null;
}

/** Whether a unique index refused a second row. */
export function isDuplicate(error: unknown): boolean {
  return (error as FailureShape).code === 'P2002' || causeOf(error).originalCode === '23505';
}
