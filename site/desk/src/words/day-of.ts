const DAY = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' });
const TIME = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' });

/** A moment or a date → "5 Mar 2026". */
export const dayOf = (moment: string): string => DAY.format(new Date(moment.length === 10 ? `${moment}T12:00:00` : moment));
export const timeOf = (moment: Date): string => TIME.format(moment);
