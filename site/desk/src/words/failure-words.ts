import { withoutRoutes } from './without-routes.js';

/** What went wrong, for people. */
export const failureWords = (error: unknown): string => withoutRoutes(error instanceof Error ? error.message : String(error));
