import { keep, kept } from '../parts/on-device.js';

/** What is typed once a day and holds for every sheet of it; kept on the device, for each account by itself. */
export interface BenchContext {
  readonly edition: string;
  readonly benchDay: string;
  readonly zone: string;
  readonly instruments: readonly string[];
  readonly temperature: string;
  readonly temperatureUnit: '°C' | '°F';
  readonly humidityPercent: string;
}

const DAY = ['context', 'day'] as const;

export const readContext = (accountId: string): BenchContext | null => kept(accountId, ...DAY) as BenchContext | null;
export const keepContext = (accountId: string, context: BenchContext): void => keep(accountId, ...DAY, context);

/** Local date, as benches write it down. */
export const today = (): string => new Intl.DateTimeFormat('sv-SE', { dateStyle: 'short' }).format(new Date());
export const ownZone = (): string => Intl.DateTimeFormat().resolvedOptions().timeZone;
