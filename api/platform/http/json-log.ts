import { ConsoleLogger } from '@nestjs/common';
import type { LogLevel } from '@nestjs/common';
import { traceFields } from '../trace/trace-context.js';

const LEVELS = ['error', 'warn', 'log', 'debug'] as const satisfies readonly LogLevel[];

/** Names the trace in each line. */
class TracedLog extends ConsoleLogger {
  protected override getJsonLogObject(...told: Parameters<ConsoleLogger['getJsonLogObject']>) {
    return { ...super.getJsonLogObject(...told), ...traceFields() };
  }
}

/** One line of JSON for each thing that is told; false for silence. */
export function jsonLog(level: 'silent' | 'error' | 'warn' | 'info' | 'debug'): ConsoleLogger | false {
  if (level === 'silent') return false;
  const logLevels = LEVELS.slice(0, LEVELS.indexOf(level === 'info' ? 'log' : level) + 1);
  return new TracedLog({ json: true, colors: false, logLevels });
}
