import type { Rig } from '../house/instruments.js';
import type { DemoMethodSlug } from '../methods/demo-methods.js';

/** One submission to be made: what is done with which spool, by whom, on which rig and day. */
export interface BenchTask {
  /** Season, variant on the box, method and running number. */
  readonly key: string;
  readonly season: string;
  readonly variant: string;
  readonly spool: string;
  readonly method: DemoMethodSlug;
  /** Bench day, counted from 0. */
  readonly day: number;
  readonly benchDay: string;
  /** Place in the list of testers. */
  readonly tester: number;
  /** Null where nothing is pulled. */
  readonly rig: Rig | null;
}
