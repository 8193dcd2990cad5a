import { withoutRoutes } from './without-routes.js';

/** What went wrong, for people. */
export const wordsOf = (error: unknown): string => withoutRoutes(error instanceof Error ? error.message : String(error));
