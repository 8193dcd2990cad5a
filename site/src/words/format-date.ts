import { LOCALE } from './locale.js';

const FORMAT = new Intl.DateTimeFormat(LOCALE, { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' });

/** `2026-03-01` or an instant in UTC → `1 March 2026`. */
export function formatDate(iso: string): string {
  return FORMAT.format(new Date(iso));
}
