import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';

/** Pictures come and go while its tester can still change what is said. */
export const isUndecided = (state: string): boolean => ['draft', 'submitted', 'returned'].includes(state);

/** Where the picture lies in the file store. */
export const pathOf = (digest: string): string => `photos/${digest}.jpg`;

/** The answer for one that does not exist, or is not for the asker: the same, so that nobody learns which. */
export const noPhoto = (id: string): Problem => new Problem(platformProblems['request/not-found'], `No photo of yours has the id ${id}.`);
