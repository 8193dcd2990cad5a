import { platformProblems } from '../../platform/errors/platform.errors.js';
import { Problem } from '../../platform/errors/problem.js';
import type { InputFault } from '../../platform/errors/problem.js';
import type { ExaminedSubmission } from '../examine/examined-submission.js';
import { submissionProblems } from '../submissions.errors.js';

/** Faults listed in one answer; a file can have more than anybody reads. */
const MOST_FAULTS = 5000;

/** Faults on their way to the answer: the first so many as they are, of the rest the count. */
export class FaultTally {
  private readonly listed: InputFault[] = [];
  private further = 0;

  static of(faults: readonly InputFault[]): FaultTally {
    const tally = new FaultTally();
    tally.add(faults);
    return tally;
  }

  add(faults: readonly InputFault[], further = 0): void {
    const room = MOST_FAULTS - this.listed.length;
    this.listed.push(...faults.slice(0, room));
    this.further += further + Math.max(0, faults.length - room);
  }

  /** In the order of the rows. */
  get faults(): InputFault[] {
    return this.listed.toSorted((one, other) => (one.row ?? 0) - (other.row ?? 0));
  }

  get count(): number {
    return this.listed.length + this.further;
  }
}

/** What the examination of an intake leaves beside the records of the good ones. */
export class IntakeTally {
  readonly faults = new FaultTally();
  readonly blocking = new FaultTally();
  /** Whether the good ones may be stored without the others. */
  isSound = true;
  /** Edition → its slug, and how many of it are good. */
  readonly good = new Map<string, { readonly slug: string; count: number }>();
  /** Rig → its records as the checks saw them first: what came in between two batches is missed by none. */
  readonly rigsSeen = new Map<string, number>();
  /** Digests of the content of the good ones. */
  readonly digests: string[] = [];

  /** Whether all that was looked at so far can be stored. */
  get isWell(): boolean {
    return this.faults.count + this.blocking.count === 0;
  }

  /** @throws Problem when nothing may be stored of what was examined */
  require(isPartial: boolean): void {
    // What is said of a submission that may lack rows would mislead.
    if (!this.isSound) throw refusal(this.faults);
    if (this.good.size === 0 || !(this.isWell || isPartial)) throw refusal(this.faults, this.blocking);
  }

  count({ subject: { edition }, rigRecords, contentDigest }: Pick<ExaminedSubmission, 'subject' | 'rigRecords' | 'contentDigest'>): void {
    this.digests.push(contentDigest);
    const ofEdition = this.good.get(edition.id) ?? { slug: edition.slug, count: 0 };
    ofEdition.count += 1;
    this.good.set(edition.id, ofEdition);
    for (const [rig, records] of rigRecords) if (!this.rigsSeen.has(rig)) this.rigsSeen.set(rig, records);
  }
}

/** The 422 for input that cannot be used, or that checks block; nothing was stored. */
export function refusal(faults: FaultTally, blocking = new FaultTally()): Problem {
  const kind = faults.count > 0 ? platformProblems['request/not-valid'] : submissionProblems['submissions/blocked'];
  const total = faults.count + blocking.count;
  const listed = [...faults.faults, ...blocking.faults].slice(0, MOST_FAULTS);
  const words = total === 1 ? '1 fault' : `${total} faults`;
  return new Problem(
    kind,
    `${words} found${total > listed.length ? `; the first ${listed.length} are listed` : ''}; nothing was stored.`,
    listed,
  );
}
