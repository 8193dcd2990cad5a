/** How long caches may keep an answer (RFC 9111). */

/** What never changes under its address. */
export const FOREVER = 'public, max-age=31536000, immutable';
/** What may be something else the next time: a cache asks first. */
export const REVALIDATE = 'public, max-age=0, must-revalidate';
/** Pages keep their names when their content changes; a minute is soon enough for what changes a few times a year. */
export const A_MINUTE = 'public, max-age=60, stale-while-revalidate=600';
/** Where something leads that has a successor. */
export const AN_HOUR = 'public, max-age=3600';
