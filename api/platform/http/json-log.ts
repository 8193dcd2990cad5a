import { ConsoleLogger } from '@nestjs/common';
import type { LogLevel } from '@nestjs/common';

const LEVELS = ['error', 'warn', 'log', 'debug'] as const satisfies readonly LogLevel[];

/** One line of JSON for each thing that is told; false for silence. */
export function jsonLog(level: 'silent' | 'error' | 'warn' | 'info' | 'debug'): ConsoleLogger | false {
  if (level === 'silent') return false;
  const logLevels = LEVELS.slice(0, LEVELS.indexOf(level === 'info' ? 'log' : level) + 1);
  return new ConsoleLogger({ json: true, colors: false, logLevels });
}
