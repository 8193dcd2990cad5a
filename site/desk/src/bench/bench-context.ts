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

const place = (accountId: string) => `desk.context.${accountId}`;

export function readContext(accountId: string): BenchContext | null {
  const kept = localStorage.getItem(place(accountId));
  return kept === null ? null : (JSON.parse(kept) as BenchContext);
}

export function keepContext(accountId: string, context: BenchContext): void {
  localStorage.setItem(place(accountId), JSON.stringify(context));
}

/** Local date, as benches write it down. */
export const today = (): string => new Intl.DateTimeFormat('sv-SE', { dateStyle: 'short' }).format(new Date());
export const ownZone = (): string => Intl.DateTimeFormat().resolvedOptions().timeZone;
