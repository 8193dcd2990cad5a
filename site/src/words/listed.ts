import { say } from './say.js';
/** `one`, `one and two`, `one, two and three` */
export const listed = (names: readonly string[]): string =>
  [names.slice(0, -1).join(', '), ...names.slice(-1)].filter((part) => part !== '').join(say` and `);
