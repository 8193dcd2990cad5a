import { Injectable } from '@nestjs/common';
import type { CheckInput } from '../../checks/check-input.js';
import { CHECKS } from '../../checks/check-list.js';
import { checkSubmission, PREVIEW_CHECKS } from '../../checks/check-submission.js';
import { InstrumentsReadModel } from '../../instruments/instruments.read-model.js';
import { Clock } from '../../platform/clock/clock.js';
import type { InputFault } from '../../platform/errors/problem.js';
import type { Actor } from '../../platform/http/access.js';
import { dateAtBench } from '../../contract/bench-day.js';
import { EvidenceReadModel } from './evidence.read-model.js';
import type { Examination, ExaminedSubmission, ReadSubmission } from './examined-submission.js';
import { FindSubjects, noNames } from './find-subjects.js';
import { inBatches } from '../intake/intake.js';
import type { HandIn } from '../intake/intake.js';
import { letOthersIn } from './let-others-in.js';
import { toOwnSubmission } from './own-evidence.js';
import { handedInTwice } from './handed-in-twice.js';
import { readSubmission } from './read-submission.js';
import { GatherBeside } from './gather-beside.js';
import type { Before, Earlier, Evidence } from './gather-beside.js';

/** What can be used, and the faults of what cannot. */
export interface Examined {
  readonly examined: readonly ExaminedSubmission[];
  readonly faults: readonly InputFault[];
}

type Read = ReadSubmission | { readonly faults: readonly InputFault[] };

const NOTHING_FOUND = { edition: null, spool: null, method: null };

/** Reads, computes and checks what is handed in; stores nothing. The same for a preview and for the record, but that a preview looks at the tester's own readings, the instruments and the method alone. */
@Injectable()
export class ExamineSubmissions {
  constructor(
    private readonly findSubjects: FindSubjects,
    private readonly instruments: InstrumentsReadModel,
    private readonly evidence: EvidenceReadModel,
    private readonly gatherBeside: GatherBeside,
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
    const found = await letOthersIn(handIns, (handIn, index) => {
      const sought = subjects[index] ?? NOTHING_FOUND;
      const read = readSubmission(actor.accountId, handIn, sought, instruments);
      return Array.isArray(read) ? { faults: read.map(handIn.locate) } : read;
    });
    const reads = before.isPreview === true ? found : await this.withoutRepeated(found, before);
    const evidence = await this.gatherBeside.run(
      actor,
      reads.filter((read): read is ReadSubmission => !('faults' in read)),
      before,
    );
    return letOthersIn(reads, (read) => ('faults' in read ? read : this.check(read, evidence, before.isPreview === true)));
  }

  /** The same content stands once: what repeats it is told where it was first. */
  private async withoutRepeated(found: readonly Read[], { ownId, earlier = [] }: Before): Promise<Read[]> {
    const onRecord = await this.evidence.sameContent(found.flatMap((read) => ('faults' in read ? [] : read.contentDigest)));
    const here = new Map(earlier.map(({ contentDigest, rows }) => [contentDigest, rows]));
    return found.map((read) => {
      if ('faults' in read) return read;
      const met = { onRecord: onRecord.get(read.contentDigest), rows: here.get(read.contentDigest) };
      const fault = handedInTwice(met, ownId);
      if (fault) return { faults: [read.locate(fault)] };
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
}
