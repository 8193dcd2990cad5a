import { Injectable } from '@nestjs/common';
import { AccountsReadModel } from '../../accounts/accounts.read-model.js';
import type { CheckInput } from '../../checks/check-input.js';
import { CHECKS } from '../../checks/check-list.js';
import { checkSubmission, PREVIEW_CHECKS } from '../../checks/check-submission.js';
import { instrumentsFor } from '../../checks/instruments-for.js';
import { chartsOf, evidenceOfRig, worstOf } from '../../reckoning/rigs/control-charts.js';
import { ControlPullsReadModel } from '../../control-pulls/control-pulls.read-model.js';
import { InstrumentsReadModel } from '../../instruments/instruments.read-model.js';
import { KeyReadings } from '../../platform/audit/key-readings.store.js';
import { Clock } from '../../platform/clock/clock.js';
import type { InputFault } from '../../platform/errors/problem.js';
import type { Actor } from '../../platform/http/access.js';
import { RetestsReadModel } from '../../retests/retests.read-model.js';
import { dateAtBench } from '../../contract/bench-day.js';
import { EvidenceReadModel } from './evidence.read-model.js';
import type { OwnSubmission } from './evidence.read-model.js';
import type { Examination, ExaminedSubmission, ReadSubmission } from './examined-submission.js';
import { FindSubjects, noNames } from './find-subjects.js';
import type { KnownNames } from './find-subjects.js';
import { inBatches } from '../intake/intake.js';
import type { HandIn } from '../intake/intake.js';
import { ownEvidence, toOwnSubmission } from './own-evidence.js';
import { handedInBefore, twiceInFile } from './repeated-faults.js';
import { readSubmission } from './read-submission.js';
import { sameHands } from './same-hands.js';

interface Before {
  /** Whether nothing may be told that rests on a label, a maker, a variant or others' results. */
  readonly isPreview?: boolean;
  /** Id of the submission whose next revision this is, which may repeat its own readings. */
  readonly ownId?: string;
  /** What was handed in with these, before them. */
  readonly earlier?: readonly Earlier[];
  /** What was looked up for these. */
  readonly names?: KnownNames;
}

interface Earlier {
  readonly own: OwnSubmission;
  readonly readingsDigest: string;
  readonly contentDigest: string;
  readonly rows: HandIn['rows'];
}

/** What can be used, and the faults of what cannot. */
export interface Examined {
  readonly examined: readonly ExaminedSubmission[];
  readonly faults: readonly InputFault[];
}

/** What the checks look at beside the submission itself. */
type Beside = Pick<CheckInput, 'knownAreaMm2' | 'hasDeclaredInterest' | 'sameReadingsAs' | 'previews' | 'secondTime'>;
type BesideOf = (read: ReadSubmission) => Beside;

interface Evidence {
  readonly besideOf: BesideOf;
  readonly ownOf: (read: ReadSubmission) => ReturnType<typeof ownEvidence>;
  readonly rigEvidence: (read: ReadSubmission) => Pick<CheckInput, 'rigEvidence' | 'rigPulls'>;
  readonly rigRecords: ReadonlyMap<string, number>;
  readonly keyReadings: (read: ReadSubmission) => CheckInput['keyReadings'];
}

type Read = ReadSubmission | { readonly faults: readonly InputFault[] };

const NOTHING_BESIDE: Beside = { knownAreaMm2: null, hasDeclaredInterest: false, sameReadingsAs: [], previews: 0, secondTime: [] };
const NOTHING_FOUND = { edition: null, spool: null, method: null };

/** Reads, computes and checks what is handed in; stores nothing. The same for a preview and for the record, but that a preview looks at the tester's own readings, the instruments and the method alone. */
@Injectable()
export class ExamineSubmissions {
  constructor(
    private readonly findSubjects: FindSubjects,
    private readonly instruments: InstrumentsReadModel,
    private readonly accounts: AccountsReadModel,
    private readonly evidence: EvidenceReadModel,
    private readonly controlPulls: ControlPullsReadModel,
    private readonly retests: RetestsReadModel,
    private readonly keyReadings: KeyReadings,
    private readonly clock: Clock,
  ) {}

  /** Batch by batch, so that a file of any length takes no more memory than a batch of it. */
  async *inTurn(actor: Actor, handIns: AsyncIterable<HandIn>, isPreview = false): AsyncGenerator<Examined> {
    const earlier: Earlier[] = [];
    const names = noNames();
    for await (const batch of inBatches(handIns)) {
      const answers = await this.run(actor, batch, { isPreview, earlier, names });
      const examined = answers.filter((answer): answer is ExaminedSubmission => !('faults' in answer));
      earlier.push(
        ...examined.map((one) => {
          const { rows, readingsDigest, contentDigest } = one;
          return { own: toOwnSubmission(one), rows, readingsDigest, contentDigest };
        }),
      );
      yield { examined, faults: answers.flatMap((answer) => ('faults' in answer ? answer.faults : [])) };
    }
  }

  /**
   * As many statements for one submission as for thousands.
   * @returns examinations in the order of the hand-ins
   */
  async run(actor: Actor, handIns: readonly HandIn[], before: Before = {}): Promise<Examination[]> {
    const contents = handIns.map(({ content }) => content);
    const subjects = await this.findSubjects.run(contents, before.names);
    const instruments = await this.instruments.byCodes([...new Set(contents.flatMap((content) => content.instruments))]);
    const found = handIns.map((handIn, index) => {
      const sought = subjects[index] ?? NOTHING_FOUND;
      const read = readSubmission(actor.accountId, handIn, sought, instruments);
      return Array.isArray(read) ? { faults: read.map(handIn.locate) } : read;
    });
    const reads = before.isPreview === true ? found : await this.withoutRepeated(found, before);
    const evidence = await this.gather(
      actor,
      reads.filter((read): read is ReadSubmission => !('faults' in read)),
      before,
    );
    return reads.map((read) => ('faults' in read ? read : this.check(read, evidence, before.isPreview === true)));
  }

  /** The same content stands once: what repeats it is told where it was first. */
  private async withoutRepeated(found: readonly Read[], { ownId, earlier = [] }: Before): Promise<Read[]> {
    const onRecord = await this.evidence.sameContent(found.flatMap((read) => ('faults' in read ? [] : read.contentDigest)));
    const here = new Map(earlier.map(({ contentDigest, rows }) => [contentDigest, rows]));
    return found.map((read) => {
      if ('faults' in read) return read;
      const [stored, rows] = [onRecord.get(read.contentDigest), here.get(read.contentDigest)];
      if (stored && stored.submissionId !== ownId) return { faults: [read.locate(handedInBefore(stored.reference))] };
      if (rows) return { faults: [read.locate(twiceInFile(rows))] };
      here.set(read.contentDigest, read.rows);
      return read;
    });
  }

  private check(
    read: ReadSubmission,
    { besideOf, ownOf, rigEvidence, rigRecords, keyReadings }: Evidence,
    isPreview: boolean,
  ): ExaminedSubmission {
    const { content, subject, temperatureC } = read;
    const own = ownOf(read);
    const input: CheckInput = {
      ...read,
      ...besideOf(read),
      ...own,
      temperatureC: Number(temperatureC),
      method: subject.method,
      variant: subject.spool.variant,
      ...rigEvidence(read),
      keyReadings: keyReadings(read),
      opensOn: subject.edition.opensOn,
      obtainedOn: subject.spool.obtainedOn,
      today: dateAtBench(this.clock.now(), content.zone),
    };
    const findings = checkSubmission(input, subject.edition.checkSet, isPreview ? PREVIEW_CHECKS : CHECKS);
    const isBlind = !content.seenLabel && input.keyReadings.length === 0;
    return { ...read, findings, rigRecords, isBlind };
  }

  private async gather(actor: Actor, reads: readonly ReadSubmission[], before: Before): Promise<Evidence> {
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
      this.accounts.interestsOf(actor.accountId),
      this.retests.secondTimes(spoolIds),
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
        hasDeclaredInterest: interests.some((interest) => interest.makerId === makerId),
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
    const known = [...onRecord.filter(({ submissionId }) => submissionId !== ownId), ...earlier.map(({ own }) => own)];
    const here = reads.map(toOwnSubmission);
    return (read) => {
      const index = reads.indexOf(read);
      const own = here[index] ?? toOwnSubmission(read);
      return ownEvidence(own, [...known, ...here.filter((_, other) => other !== index)], [...known, ...here.slice(0, index)]);
    };
  }

  private async rigEvidence(reads: readonly ReadSubmission[]): Promise<Pick<Evidence, 'rigEvidence' | 'rigRecords'>> {
    const rigsOf = ({ instruments }: ReadSubmission): string[] => instrumentsFor('breakingForce', instruments).map(({ code }) => code);
    const rigs = [...new Set(reads.flatMap(rigsOf))];
    // First the records: what comes in between the two is missing in them, so that the storing finds it.
    const rigRecords = await this.controlPulls.records(rigs);
    const methods = [...new Set(reads.map(({ subject }) => subject.method.slug))];
    const charts = chartsOf(await this.controlPulls.pulls({ instruments: rigs, methods }));
    return {
      rigEvidence: (read) => {
        const known = rigsOf(read).map((rig) => evidenceOfRig(charts, rig, read.subject.method.slug, read.content.benchDay));
        return { rigEvidence: worstOf(known.map(({ state }) => state)), rigPulls: Math.min(...known.map(({ pulls: count }) => count)) };
      },
      rigRecords,
    };
  }
}
