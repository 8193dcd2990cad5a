/**
 * Work that belongs together bears one trace id, from a request that a client or proxy began it with to what a worker does of it later.
 * @see https://www.w3.org/TR/trace-context/ (the header traceparent), https://opentelemetry.io/docs/specs/otel/compatibility/logging_trace_context/ (names in a log)
 */
import { AsyncLocalStorage } from 'node:async_hooks';
import { randomBytes } from 'node:crypto';

interface Span {
  /** 32 hexadecimal digits, the same over all of the work. */
  readonly traceId: string;
  /** 16 hexadecimal digits, of this part of it alone. */
  readonly spanId: string;
  /** Two hexadecimal digits, as they came. */
  readonly flags: string;
}

/** Version, trace, parent, flags; a later version than 00 may say more behind them, and ff is none. */
const TRACEPARENT = /^(?:00(?=.{53}$)|(?!00|ff)[\da-f]{2})-(?!0{32})([\da-f]{32})-(?!0{16})([\da-f]{16})-([\da-f]{2})(?:$|-)/;
const NOT_RECORDED = '00';
const running = new AsyncLocalStorage<Span>();
const random = (bytes: number): string => randomBytes(bytes).toString('hex');

/** Does work as a part of the trace that a traceparent tells; of a new one where it tells none. */
export function inTrace<Answer>(traceparent: unknown, work: () => Answer): Answer {
  const [, traceId = random(16), , flags = NOT_RECORDED] = (typeof traceparent === 'string' && TRACEPARENT.exec(traceparent)) || [];
  return running.run({ traceId, spanId: random(8), flags }, work);
}

/** What makes other work a part of this trace; undefined outside of one. */
export function traceparent(): string | undefined {
  const span = running.getStore();
  return span && `00-${span.traceId}-${span.spanId}-${span.flags}`;
}

/** How a line of the log names the trace that it belongs to. */
export function traceFields(): Readonly<Record<string, string>> {
  const span = running.getStore();
  return span ? { trace_id: span.traceId, span_id: span.spanId, trace_flags: span.flags } : {};
}
