import { Injectable } from '@nestjs/common';
import { AccountsReadModel } from '../accounts/accounts.read-model.js';
import type { CheckInput } from '../checks/check-input.js';
import { checkSubmission } from '../checks/check-submission.js';
import { instrumentsFor } from '../checks/instruments-for.js';
import { chartsOf, evidenceOfRig, recordsOf, worstOf } from '../reckoning/rigs/control-charts.js';
import { ControlPullsReadModel } from '../control-pulls/control-pulls.read-model.js';
import { InstrumentsReadModel } from '../instruments/instruments.read-model.js';
import { Clock } from '../platform/clock/clock.js';
import type { Actor } from '../platform/http/access.js';
import { RetestsReadModel } from '../retests/retests.read-model.js';
import { dateAtBench } from '../contract/bench-day.js';
import { EvidenceReadModel } from './evidence.read-model.js';
import type { Examination, ExaminedSubmission, ReadSubmission } from './examined-submission.js';
import { FindSubjects } from './find-subjects.js';
import type { KnownNames } from './find-subjects.js';
import { inBatches, sortOut } from './intake.js';
import type { HandIn } from './intake.js';
import { readSubmission } from './read-submission.js';
import { secondTimeFaults } from './second-time-faults.js';
import type { SubmissionContent } from '../contract/submission-content.js';

interface Before {
  readonly ownId?: string;
  readonly earlier?: ReadonlySet<string>;
  readonly names?: KnownNames;
}

interface Evidence {
  readonly sameReadingsAs: (read: ReadSubmission) => string[];
  readonly knownAreasMm2: ReadonlyMap<string, number>;
  readonly interests: ReadonlyMap<string, boolean>;
  readonly rigEvidence: (read: ReadSubmission) => Pick<CheckInput, 'rigEvidence' | 'rigPulls'>;
  readonly rigRecords: ReadonlyMap<string, number>;
}

/** Reads, computes and checks what is handed in; stores nothing. The same for a preview and for the record. */
@Injectable()
export class ExamineSubmissions {
  constructor(
    private readonly findSubjects: FindSubjects,
    private readonly instruments: InstrumentsReadModel,
    private readonly accounts: AccountsReadModel,
    private readonly evidence: EvidenceReadModel,
    private readonly controlPulls: ControlPullsReadModel,
    private readonly retests: RetestsReadModel,
    private readonly clock: Clock,
  ) {}

  /** Batch by batch, so that a file of any length takes no more memory than a batch of it. */
  async *inTurn(actor: Actor, handIns: AsyncIterable<HandIn>): AsyncGenerator<ReturnType<typeof sortOut>> {
    const earlier = new Set<string>();
    const names = this.findSubjects.keeping();
    for await (const batch of inBatches(handIns)) {
      const contents = batch.map(({ content }) => content);
      const { sorted, faults } = sortOut(batch, await this.run(actor, contents, { earlier, names }));
      for (const { examined } of sorted) earlier.add(examined.readingsDigest);
      yield { sorted, faults };
    }
  }

  /**
   * Few queries, however many submissions.
   * @param before ownId: id of the submission whose next revision this is, which may repeat its own readings; earlier: digests of the
   * readings that were handed in with these, before them; names: what was looked up for these
   * @returns examinations in the order of the contents
   */
  async run(actor: Actor, contents: readonly SubmissionContent[], before: Before = {}): Promise<Examination[]> {
    const subjects = await this.findSubjects.run(contents, before.names);
    const instruments = await this.instruments.byCodes([...new Set(contents.flatMap((content) => content.instruments))]);
    const secondTimes = await this.retests.secondTimes(subjects.flatMap(({ sought }) => sought.spool?.id ?? []));
    const reads = subjects.map(({ naming, sought }) => {
      const faults = secondTimeFaults(actor.accountId, naming, secondTimes.get(sought.spool?.id ?? ''));
      return faults.length > 0 ? faults : readSubmission(naming, sought, instruments);
    });
    const evidence = await this.gather(
      actor,
      reads.filter((read): read is ReadSubmission => !Array.isArray(read)),
      before,
    );
    return reads.map((read) => (Array.isArray(read) ? { faults: read } : this.check(read, evidence)));
  }

  private check(read: ReadSubmission, { sameReadingsAs, knownAreasMm2, interests, rigEvidence, rigRecords }: Evidence): ExaminedSubmission {
    const { content, subject, temperatureC } = read;
    const { variant } = subject.spool;
    const findings = checkSubmission(
      {
        ...read,
        temperatureC: Number(temperatureC),
        method: subject.method,
        variant,
        knownAreaMm2: read.figures.areaMm2 ?? knownAreasMm2.get(variant.id) ?? null,
        hasDeclaredInterest: interests.get(variant.makerId) ?? false,
        sameReadingsAs: sameReadingsAs(read),
        ...rigEvidence(read),
        opensOn: subject.edition.opensOn,
        obtainedOn: subject.spool.obtainedOn,
        today: dateAtBench(this.clock.now(), content.zone),
      },
      subject.edition.checkSet,
    );
    return { ...read, findings, rigRecords };
  }

  private async gather(actor: Actor, reads: readonly ReadSubmission[], before: Before): Promise<Evidence> {
    const variants = reads.map(({ subject }) => subject.spool.variant);
    const makerIds = [...new Set(variants.map(({ makerId }) => makerId))];
    const [onRecord, knownAreasMm2, interests] = await Promise.all([
      this.evidence.sameReadings(reads.map(({ readingsDigest }) => readingsDigest)),
      this.evidence.knownAreasMm2(variants.map(({ id }) => id)),
      Promise.all(makerIds.map(async (makerId) => [makerId, await this.accounts.hasInterest(actor.accountId, makerId)] as const)),
    ]);
    const firstWith = new Map(reads.toReversed().map((read) => [read.readingsDigest, read]));
    const sameReadingsAs = (read: ReadSubmission): string[] => {
      const stored = (onRecord.get(read.readingsDigest) ?? [])
        .filter(({ submissionId }) => submissionId !== before.ownId)
        .map(({ reference }) => reference);
      const isTwiceHere = before.earlier?.has(read.readingsDigest) === true || firstWith.get(read.readingsDigest) !== read;
      return [...new Set(stored), ...(isTwiceHere ? ['another submission handed in with it'] : [])];
    };
    return { sameReadingsAs, knownAreasMm2, interests: new Map(interests), ...(await this.rigEvidence(reads)) };
  }

  private async rigEvidence(reads: readonly ReadSubmission[]): Promise<Pick<Evidence, 'rigEvidence' | 'rigRecords'>> {
    const rigsOf = ({ instruments }: ReadSubmission): string[] => instrumentsFor('breakingForce', instruments).map(({ code }) => code);
    const pulls = await this.controlPulls.pulls({ instruments: [...new Set(reads.flatMap(rigsOf))] });
    const charts = chartsOf(pulls);
    return {
      rigEvidence: (read) => {
        const known = rigsOf(read).map((rig) => evidenceOfRig(charts, rig, read.subject.method.slug, read.content.benchDay));
        return { rigEvidence: worstOf(known.map(({ state }) => state)), rigPulls: Math.min(...known.map(({ pulls: count }) => count)) };
      },
      rigRecords: new Map(reads.flatMap(rigsOf).map((rig) => [rig, recordsOf(pulls.filter(({ instrument }) => instrument === rig))])),
    };
  }
}
