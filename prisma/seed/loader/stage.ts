import type { Certificates } from './fit-out-bench.js';
import type { People } from './people.js';
import type { SeasonClock } from './season-clock.js';

/** What the loading of a season works with. */
export interface Stage {
  readonly people: People;
  readonly clock: SeasonClock;
  readonly certificates: Certificates;
  /** Spool of the demo → blind code that the program drew. */
  readonly blindCodes: Map<string, string>;
  /** Submission of the demo → reference that the program gave. */
  readonly references: Map<string, string>;
}

/** Looks up what an earlier step has written down. */
export function noted(notes: ReadonlyMap<string, string>, key: string): string {
  const found = notes.get(key);
  if (found === undefined) throw new Error(`Nothing is noted for ${key}; the step that enters it has not run.`);
  return found;
}
