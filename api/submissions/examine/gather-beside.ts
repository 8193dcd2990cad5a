import { Injectable } from '@nestjs/common';
import { InterestsReadModel } from '../../interests/interests.read-model.js';
import type { CheckInput } from '../../checks/check-input.js';
import { instrumentsFor } from '../../checks/instruments-for.js';
import { chartsOf, evidenceOfRig, worstOf } from '../../reckoning/rigs/control-charts.js';
import { ControlPullsReadModel } from '../../control-pulls/control-pulls.read-model.js';
import { MethodsReadModel } from '../../methods/methods.read-model.js';
import { KeyReadings } from '../../audit/key-readings.store.js';
import type { Actor } from '../../platform/http/access.js';
import { RetestedSubmissions } from '../retested.read-model.js';
import { EvidenceReadModel } from './evidence.read-model.js';
import type { OwnSubmission } from './evidence.read-model.js';
import type { ReadSubmission } from './examined-submission.js';
import type { KnownNames } from './find-subjects.js';
import type { HandIn } from '../intake/intake.js';
import { ownEvidence, toOwnSubmission } from './own-evidence.js';
import { sameHands } from './same-hands.js';

export interface Before {
  /** Whether nothing may be told that rests on a label, a maker, a variant or others' results. */
  readonly isPreview?: boolean;
  /** Id of the submission whose next revision this is, which may repeat its own readings. */
  readonly ownId?: string;
  /** What was handed in with these, before them. */
  readonly earlier?: readonly Earlier[];
  /** What was looked up for these. */
  readonly names?: KnownNames;
}

export interface Earlier {
  readonly own: OwnSubmission;
  readonly readingsDigest: string;
  readonly contentDigest: string;
  readonly rows: HandIn['rows'];
}

/** What the checks look at beside the submission itself. */
type Beside = Pick<CheckInput, 'knownAreaMm2' | 'hasDeclaredInterest' | 'sameReadingsAs' | 'previews' | 'secondTime'>;
type BesideOf = (read: ReadSubmission) => Beside;

export interface Evidence {
  readonly besideOf: BesideOf;
  readonly ownOf: (read: ReadSubmission) => ReturnType<typeof ownEvidence>;
  readonly rigEvidence: (read: ReadSubmission) => Pick<CheckInput, 'rigEvidence' | 'rigPulls'>;
  readonly rigRecords: ReadonlyMap<string, number>;
  readonly keyReadings: (read: ReadSubmission) => CheckInput['keyReadings'];
}

const NOTHING_BESIDE: Beside = { knownAreaMm2: null, hasDeclaredInterest: false, sameReadingsAs: [], previews: 0, secondTime: [] };

/** Collects what the checks look at beside what was handed in: the tester's own work, others' results, the rig, keys that were read. */
@Injectable()
export class GatherBeside {
  constructor(
    private readonly interests: InterestsReadModel,
    private readonly evidence: EvidenceReadModel,
    private readonly controlPulls: ControlPullsReadModel,
    private readonly methods: MethodsReadModel,
    private readonly retested: RetestedSubmissions,
    private readonly keyReadings: KeyReadings,
  ) {}

  /** With as many statements for one submission as for thousands. */
  async run(actor: Actor, reads: readonly ReadSubmission[], before: Before): Promise<Evidence> {
    return {
      besideOf: before.isPreview === true ? () => NOTHING_BESIDE : await this.beside(actor, reads, before),
      ownOf: await this.own(actor, reads, before),
      ...(await this.rigEvidence(reads)),
      keyReadings: await this.keysRead(actor, reads),
    };
  }

  private async keysRead(actor: Actor, reads: readonly ReadSubmission[]): Promise<Evidence['keyReadings']> {
    const read = await this.keyReadings.of(
      actor.accountId,
      reads.map(({ subject }) => subject.spool.id),
    );
    return ({ subject }) => read.get(subject.spool.id) ?? [];
  }

  private async beside(actor: Actor, reads: readonly ReadSubmission[], { ownId, earlier = [] }: Before): Promise<BesideOf> {
    const spoolIds = reads.map(({ subject }) => subject.spool.id);
    const [onRecord, knownAreasMm2, interests, secondTimes, previews] = await Promise.all([
      this.evidence.sameReadings(reads.map(({ readingsDigest }) => readingsDigest)),
      this.evidence.knownAreasMm2(reads.map(({ subject }) => subject.spool.variant.id)),
      this.interests.makersOf(actor.accountId),
      this.retested.secondTimes(spoolIds),
      this.evidence.previewsOf(actor.accountId, spoolIds),
    ]);
    const digests = new Set(earlier.map(({ readingsDigest }) => readingsDigest));
    const firstWith = new Map(reads.toReversed().map((read) => [read.readingsDigest, read]));
    return (read) => {
      const { id: spoolId, variant } = read.subject.spool;
      const { id, makerId } = variant;
      const stored = (onRecord.get(read.readingsDigest) ?? [])
        .filter(({ submissionId }) => submissionId !== ownId)
        .map(({ reference }) => reference);
      const isTwiceHere = digests.has(read.readingsDigest) || firstWith.get(read.readingsDigest) !== read;
      return {
        knownAreaMm2: read.figures.areaMm2 ?? knownAreasMm2.get(id) ?? null,
        hasDeclaredInterest: interests.includes(makerId),
        sameReadingsAs: [...new Set(stored), ...(isTwiceHere ? ['another submission handed in with it'] : [])],
        previews: previews.get(spoolId) ?? 0,
        secondTime: sameHands(actor.accountId, read.content, secondTimes.get(spoolId)),
      };
    };
  }

  private async own(actor: Actor, reads: readonly ReadSubmission[], { ownId, earlier = [] }: Before): Promise<Evidence['ownOf']> {
    const spoolIds = reads.map(({ subject }) => subject.spool.id);
    const onRecord = await this.evidence.ofTester(
      actor.accountId,
      spoolIds,
      reads.map(({ content }) => content.benchDay),
    );
    const here = new Map(reads.map((read) => [read, toOwnSubmission(read)]));
    const all = [...onRecord.filter(({ submissionId }) => submissionId !== ownId), ...earlier.map(({ own }) => own), ...here.values()];
    const ofSpool = Map.groupBy(all, ({ spoolId }) => spoolId);
    const ofDay = Map.groupBy(all, ({ benchDay }) => benchDay);
    return (read) => {
      const own = here.get(read);
      if (!own) throw new Error('Own evidence was asked of what it was not gathered for.');
      return ownEvidence(own, ofSpool.get(own.spoolId) ?? [], ofDay.get(own.benchDay) ?? []);
    };
  }

  private async rigEvidence(reads: readonly ReadSubmission[]): Promise<Pick<Evidence, 'rigEvidence' | 'rigRecords'>> {
    const rigsOf = ({ instruments }: ReadSubmission) => instrumentsFor('breakingForce', instruments);
    const rigs = new Map(reads.flatMap(rigsOf).map(({ id, code }) => [id, code]));
    // First the records: what comes in between the two is missing in them, so that the storing finds it.
    const rigRecords = await this.controlPulls.records(rigs.keys());
    const isWatched = [...rigRecords.values()].some((records) => records > 0);
    const charts = isWatched ? chartsOf(await this.pullsAround(rigs, reads)) : [];
    return {
      rigEvidence: (read) => {
        const known = rigsOf(read).map(({ code }) => evidenceOfRig(charts, code, read.subject.method.slug, read.content.benchDay));
        return { rigEvidence: worstOf(known.map(({ state }) => state)), rigPulls: Math.min(...known.map(({ pulls: count }) => count)) };
      },
      rigRecords,
    };
  }

  private async pullsAround(rigs: ReadonlyMap<string, string>, reads: readonly ReadSubmission[]) {
    const methods = await this.methods.known(reads.map(({ subject }) => subject.method.slug));
    return this.controlPulls.pullsAround(
      { rigs, methods },
      reads.map(({ content }) => content.benchDay),
    );
  }
}
