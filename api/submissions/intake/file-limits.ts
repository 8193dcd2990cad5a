/** Most that a file of readings may hold, beside its bytes (`api/contract/body-sizes.ts`). */

export const MOST_SUBMISSIONS = 5000;
/** Characters that a row may have, the header too. */
export const LONGEST_RECORD = 100_000;
/** Faults that are listed one by one; a file can have more than anybody reads. */
export const MOST_LISTED = 1000;
