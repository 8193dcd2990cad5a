/** What went wrong, for people. */
export const wordsOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));
