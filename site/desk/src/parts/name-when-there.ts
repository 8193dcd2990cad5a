import type { Loaded } from './use-loaded.js';

const NOT_YET = '…';

/** What something is called. Until the names are there it is nothing that a reader could take for its name; where they cannot be had, or hold it not, its short name. */
export const nameWhenThere =
  <Names>(names: Loaded<Names>, find: (names: Names, slug: string) => string | undefined) =>
  (slug: string): string => {
    if (names.answer !== null) return find(names.answer, slug) ?? slug;
    return names.fault === '' ? NOT_YET : slug;
  };
