import { Injectable } from '@nestjs/common';
import { AccountsReadModel } from '../accounts/accounts.read-model.js';
import type { CheckInput } from '../checks/check-input.js';
import { checkSubmission } from '../checks/check-submission.js';
import { instrumentsFor } from '../checks/instruments-for.js';
import { chartsOf, evidenceOfRig, worstOf } from '../control-pulls/control-charts.js';
import { ControlPullsReadModel } from '../control-pulls/control-pulls.read-model.js';
import { InstrumentsReadModel } from '../instruments/instruments.read-model.js';
import { Clock } from '../platform/clock/clock.js';
import type { InputFault } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { RetestsReadModel } from '../retests/retests.read-model.js';
import { dateAtBench } from './bench-day.js';
import { EvidenceReadModel } from './evidence.read-model.js';
import type { Examination, ExaminedSubmission, ReadSubmission } from './examined-submission.js';
import { FindSubjects, noNames } from './find-subjects.js';
import type { KnownNames } from './find-subjects.js';
import { inBatches } from './intake.js';
import type { HandIn } from './intake.js';
import { readSubmission } from './read-submission.js';
import { secondTimeFaults } from './second-time-faults.js';

interface Before {
  /** Id of the submission whose next revision this is, which may repeat its own readings. */
  readonly ownId?: string;
  /** Digests of the readings that were handed in with these, before them. */
  readonly earlier?: ReadonlySet<string>;
  /** What was looked up for these. */
  readonly names?: KnownNames;
}

/** What can be used, and the faults of what cannot. */
export interface Examined {
  readonly examined: readonly ExaminedSubmission[];
  readonly faults: readonly InputFault[];
}

interface Evidence {
  readonly sameReadingsAs: (read: ReadSubmission) => string[];
  readonly knownAreasMm2: ReadonlyMap<string, number>;
  readonly interests: ReadonlySet<string>;
  readonly rigEvidence: (read: ReadSubmission) => CheckInput['rigEvidence'];
  readonly rigRecords: ReadonlyMap<string, number>;
}

const NOTHING_FOUND = { edition: null, spool: null, method: null };

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
  async *inTurn(actor: Actor, handIns: AsyncIterable<HandIn>): AsyncGenerator<Examined> {
    const earlier = new Set<string>();
    const names = noNames();
    for await (const batch of inBatches(handIns)) {
      const answers = await this.run(actor, batch, { earlier, names });
      const examined = answers.filter((answer): answer is ExaminedSubmission => !('faults' in answer));
      for (const { readingsDigest } of examined) earlier.add(readingsDigest);
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
    const secondTimes = await this.retests.secondTimes(subjects.flatMap(({ spool }) => spool?.id ?? []));
    const reads = handIns.map((handIn, index) => {
      const sought = subjects[index] ?? NOTHING_FOUND;
      const faults = secondTimeFaults(actor.accountId, handIn.content, secondTimes.get(sought.spool?.id ?? ''));
      const read = faults.length > 0 ? faults : readSubmission(handIn, sought, instruments);
      return Array.isArray(read) ? { faults: read.map(handIn.locate) } : read;
    });
    const evidence = await this.gather(
      actor,
      reads.filter((read): read is ReadSubmission => !('faults' in read)),
      before,
    );
    return reads.map((read) => ('faults' in read ? read : this.check(read, evidence)));
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
        hasDeclaredInterest: interests.has(variant.makerId),
        sameReadingsAs: sameReadingsAs(read),
        rigEvidence: rigEvidence(read),
        today: dateAtBench(this.clock.now(), content.zone),
      },
      subject.edition.checkSet,
    );
    return { ...read, findings, rigRecords };
  }

  private async gather(actor: Actor, reads: readonly ReadSubmission[], before: Before): Promise<Evidence> {
    const variants = reads.map(({ subject }) => subject.spool.variant);
    const [onRecord, knownAreasMm2, interests] = await Promise.all([
      this.evidence.sameReadings(reads.map(({ readingsDigest }) => readingsDigest)),
      this.evidence.knownAreasMm2(variants.map(({ id }) => id)),
      this.accounts.interestsOf(actor.accountId),
    ]);
    const firstWith = new Map(reads.toReversed().map((read) => [read.readingsDigest, read]));
    const sameReadingsAs = (read: ReadSubmission): string[] => {
      const stored = (onRecord.get(read.readingsDigest) ?? [])
        .filter(({ submissionId }) => submissionId !== before.ownId)
        .map(({ reference }) => reference);
      const isTwiceHere = before.earlier?.has(read.readingsDigest) === true || firstWith.get(read.readingsDigest) !== read;
      return [...new Set(stored), ...(isTwiceHere ? ['another submission handed in with it'] : [])];
    };
    return { sameReadingsAs, knownAreasMm2, interests: new Set(interests.map(({ makerId }) => makerId)), ...(await this.rigEvidence(reads)) };
  }

  private async rigEvidence(reads: readonly ReadSubmission[]): Promise<Pick<Evidence, 'rigEvidence' | 'rigRecords'>> {
    const rigsOf = ({ instruments }: ReadSubmission): string[] => instrumentsFor('breakingForce', instruments).map(({ code }) => code);
    const rigs = [...new Set(reads.flatMap(rigsOf))];
    // First the records: what comes in between the two is missing in them, so that the storing finds it.
    const rigRecords = await this.controlPulls.records(rigs);
    const methods = [...new Set(reads.map(({ subject }) => subject.method.slug))];
    const charts = chartsOf(await this.controlPulls.pulls({ instruments: rigs, methods }));
    return {
      rigEvidence: (read) =>
        worstOf(rigsOf(read).map((rig) => evidenceOfRig(charts, rig, read.subject.method.slug, read.content.benchDay).state)),
      rigRecords,
    };
  }
}
