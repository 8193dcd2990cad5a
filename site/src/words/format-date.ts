const FORMAT = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' });

/** `2026-03-01` or an instant in UTC → `1 March 2026`. */
export function formatDate(iso: string): string {
  return FORMAT.format(new Date(iso));
}
