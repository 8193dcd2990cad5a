import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../../platform/audit/audit-trail.store.js';
import { checkTraces } from '../../checks/check-traces.js';
import { MeasurementError } from '../../measurement/errors.js';
import { parseQuantityAs } from '../../measurement/units/parse-quantity-as.js';
import { Clock } from '../../platform/clock/clock.js';
import { Database } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/database.js';
import { Problem } from '../../platform/errors/problem.js';
import type { InputFault } from '../../platform/errors/problem.js';
import { FileStore } from '../../platform/file-store/file-store.js';
import type { Actor } from '../../platform/http/access.js';
import { requireSameVersion } from '../../platform/http/headers/if-match.js';
import { notValid } from '../../platform/http/validation.js';
import { sha256 } from '../../platform/identifiers/identifiers.js';
import { EvidenceReadModel } from '../examine/evidence.read-model.js';
import { statesFor } from '../../contract/submission-actions.js';
import { noSubmission } from '../submission.js';
import { submissionProblems } from '../submissions.errors.js';
import type { ReadTrace } from './read-trace-file.js';
import { thinOut } from '../../readings/traces/thin-out.js';
import { traceFigures } from '../../readings/traces/trace-figures.js';
import type { TraceConditions, TraceFigures } from '../../readings/traces/trace-figures.js';
import { FindingsStore } from '../../findings/findings.store.js';
import { SubmissionsStore } from '../submissions.store.js';
import { TracesStore } from './traces.store.js';

/** A file of traces as it came, and what was read from it. */
export interface TraceFile {
  readonly bytes: Uint8Array;
  readonly traces: readonly ReadTrace[];
  /** Specimen that the file is of, where it does not say so itself. */
  readonly specimen: number | null;
}

/** What is kept of one trace. */
type Found = ReadTrace & { readonly specimenId: string; readonly number: number; readonly figures: TraceFigures };

type Locked = NonNullable<Awaited<ReturnType<TracesStore['lock']>>>;

/** Adds traces to an own submission that waits for its review: the file as it came, its figures, its course, and a finding where it disagrees with a reading. */
@Injectable()
export class AddTraces {
  constructor(
    private readonly database: Database,
    private readonly store: TracesStore,
    private readonly submissions: SubmissionsStore,
    private readonly findings: FindingsStore,
    private readonly evidence: EvidenceReadModel,
    private readonly files: FileStore,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, reference: string, version: number, file: TraceFile): Promise<void> {
    const digest = sha256(file.bytes);
    await this.database.transaction(async (tx) => {
      const submission = await this.store.lock(tx, reference);
      if (submission?.testerId !== actor.accountId) throw noSubmission(reference);
      requireSameVersion(submission.version, version);
      if (!statesFor('addTraces').some((state) => state === submission.state)) {
        const detail = `${reference} is ${submission.state}; expected submitted: traces come after it was handed in and before it is reviewed.`;
        throw new Problem(submissionProblems['submissions/wrong-state'], detail);
      }
      const known = await this.evidence.knownAreasMm2([submission.variantId]);
      const found = place(submission, file, submission.areaMm2 ?? known.get(submission.variantId) ?? null);
      await this.keep(tx, digest, file.bytes, found);
      const peaks = found.map(({ number, figures }) => ({ specimen: number, peakForceN: Number(figures.peakForceN) }));
      const findings = checkTraces({ specimens: submission.specimens, traces: peaks }, submission.pinnedChecks, submission.checkSettings);
      await this.findings.add(
        tx,
        findings.map((finding) => ({ revisionId: submission.revisionId, finding })),
      );
      await this.submissions.touch(tx, submission.id);
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'traces.added',
        objectType: 'submission',
        objectId: reference,
        after: { digest, specimens: found.map(({ number }) => number) },
      });
    });
  }

  private async keep(tx: Transaction, digest: string, bytes: Uint8Array, found: readonly Found[]): Promise<void> {
    const addedAt = this.clock.now();
    await this.files.write(`traces/${digest}.csv`, bytes);
    await this.store.add(
      tx,
      found.map(({ specimenId, over, samples, figures }) => ({
        specimenId,
        digest,
        over,
        sampleCount: samples.length,
        figures,
        points: thinOut(samples),
        addedAt,
      })),
    );
  }
}

/** Puts each trace beside its specimen and computes its figures; or tells every fault. */
function place(submission: Locked, { traces, specimen }: TraceFile, areaMm2: number | null): Found[] {
  const conditions = { gaugeLengthMm: gaugeLengthMm(submission.parameters.settings ?? []), areaMm2 };
  const faults: InputFault[] = [];
  const found = traces.flatMap((trace) => {
    const placed = placeOne(submission, trace, trace.specimen ?? specimen, conditions);
    if ('fault' in placed) faults.push(placed.fault);
    return 'fault' in placed ? [] : [placed];
  });
  if (faults.length > 0) throw notValid(faults);
  return found;
}

function placeOne(submission: Locked, trace: ReadTrace, number: number | null, conditions: TraceConditions): Found | { fault: InputFault } {
  const fault = (code: string, detail: string) => ({ fault: { pointer: `/specimens/${number ?? ''}`, code, detail } });
  if (number === null)
    return fault('specimen_not_named', 'The file does not say of which specimen it is. Add ?specimen=<number>, or a column "specimen".');
  const specimen = submission.specimens.find((one) => one.number === number);
  if (!specimen) {
    const numbers = submission.specimens.map((one) => one.number).join(', ');
    return fault('unknown_specimen', `No specimen has the number ${number}; expected one of ${numbers}.`);
  }
  if (specimen.hasTrace) return fault('duplicate', `Specimen ${number} has a trace already, and it stands. Leave it out.`);
  try {
    return { ...trace, number, specimenId: specimen.id, figures: traceFigures(trace.over, trace.samples, conditions) };
  } catch (error) {
    if (error instanceof MeasurementError) return fault(error.code, `Specimen ${number}: ${error.inWords}`);
    throw error;
  }
}

/** The free length between the grips, by the settings of the method version [mm]; null where it names none. */
function gaugeLengthMm(settings: readonly { name: string; value: string; unit: string }[]): number | null {
  const setting = settings.find(({ name }) => /^(gauge|free) length/i.test(name));
  if (!setting) return null;
  try {
    return 1000 * Number(parseQuantityAs(setting.value, setting.unit, 'length').si);
  } catch (error) {
    if (error instanceof MeasurementError) return null;
    throw error;
  }
}
