import type { Former } from '../contract/former.js';
import type { SupersededRows } from '../audit/superseded.store.js';

/** A row with what it said before; without, where it was never superseded. */
export const withFormer = <Row extends object>(row: Row, former: Awaited<ReturnType<SupersededRows['of']>>): Row & { former?: Former } =>
  former.length === 0 ? row : { ...row, former: former as Former };
