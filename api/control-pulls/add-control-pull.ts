import { Injectable } from '@nestjs/common';
import canonicalize from 'canonicalize';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { InstrumentsReadModel } from '../instruments/instruments.read-model.js';
import { MethodsReadModel } from '../methods/methods.read-model.js';
import { parseQuantityAs } from '../measurement/units/parse-quantity-as.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/database.js';
import { isDuplicate } from '../platform/database/database-failure.js';
import { sha256 } from '../platform/identifiers/identifiers.js';
import { futureFaults } from '../platform/clock/future-faults.js';
import { Problem } from '../platform/errors/problem.js';
import type { InputFault } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { notValid } from '../platform/http/validation.js';
import { CastDoubt } from './cast-doubt.js';
import { controlPullProblems } from './control-pulls.errors.js';
import type { ControlPullRequest } from '../contract/endpoints/control-pulls.js';
import { retiredFault, toRetired } from '../contract/retired.js';
import type { Retirement } from '../contract/retired.js';
import { readForce } from '../readings/read-force.js';
import { RIG_KINDS } from '../contract/instrument-kinds.js';
import type { ChartedPull, ControlChart } from '../reckoning/rigs/control-charts.js';
import type { ControlPullOnRecord } from './control-pulls.read-model.js';
import { ControlPullsStore } from './control-pulls.store.js';
import type { Air } from './control-pulls.store.js';

export interface PulledControlLine {
  /** As it stands in its chart. */
  readonly charted: ChartedPull<ControlPullOnRecord>;
  readonly doubted: number;
}

/** Takes the pulls on the control line that begin a bench day. One that puts the rig out casts doubt back to the last good one; one that is good is always taken, and clears it. A late one is kept, and judges nothing. */
@Injectable()
export class AddControlPull {
  constructor(
    private readonly database: Database,
    private readonly store: ControlPullsStore,
    private readonly instruments: InstrumentsReadModel,
    private readonly methods: MethodsReadModel,
    private readonly castDoubt: CastDoubt,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, input: ControlPullRequest): Promise<PulledControlLine> {
    const readings = input.readings.map((reading, index) => readForce(reading, index));
    const handedInAt = this.clock.now();
    const method = await this.methods.pullMethod(input.method);
    const faults = [
      ...readings.flatMap((read) => ('fault' in read ? [read.fault] : [])),
      ...futureFaults('/benchDay', input.benchDay, handedInAt),
    ];
    const contentDigest = digestOf(actor.accountId, input);
    return this.once(contentDigest, async (tx) => {
      // Everybody who writes a pull of a rig waits here for the one before, for each pull is judged by those before it.
      const rig = await this.instruments.hold(tx, input.instrument);
      const line = await this.store.controlLine(tx, input.controlLine);
      const unknown = unknownNames(input, { rig, line, method });
      if (faults.length + unknown.length > 0 || !rig || !line || 'code' in method) throw notValid([...unknown, ...faults]);
      const before = await this.store.countedBefore(tx, rig.id, method.id, input.benchDay);
      const { id, isLate } = await this.store.addPull(tx, {
        controlLineId: line.id,
        instrumentId: rig.id,
        methodId: method.id,
        testerId: actor.accountId,
        benchDay: new Date(input.benchDay),
        handedInAt,
        note: input.note,
        contentDigest,
        ...airOf(input.ambient),
        readings: readings.flatMap((read) => ('fault' in read ? [] : [read])),
      });
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'controlPull.handedIn',
        objectType: 'controlPull',
        objectId: id,
        after: input,
      });
      const watched = { instrument: rig, method: { id: method.id, slug: input.method } };
      const charts = await this.castDoubt.charts(tx, watched);
      const doubted = isLate ? 0 : await this.castDoubt.run(tx, actor.accountId, watched, charts, before);
      return { charted: inChart(charts, id), doubted };
    });
  }

  /** The record keeps the same pull from standing twice; which it is is told by its number. */
  private async once<Answer>(contentDigest: string, work: (tx: Transaction) => Promise<Answer>): Promise<Answer> {
    try {
      return await this.database.transaction(work);
    } catch (error) {
      if (!isDuplicate(error)) throw error;
      const first = await this.database.transaction((tx) => this.store.pullWithContent(tx, contentDigest));
      throw new Problem(controlPullProblems['control-pulls/handed-in-before'], `It is on record as ${first ?? 'another pull'}.`);
    }
  }
}

function inChart(charts: readonly ControlChart<ControlPullOnRecord>[], id: string): PulledControlLine['charted'] {
  const charted = charts.flatMap(({ pulls }) => pulls).find(({ pull }) => pull.id === id);
  if (!charted) throw new Error(`Control pull ${id} is on record and stands in no chart of its rig.`);
  return charted;
}

/** What is the same readings in other units is the same pull. */
function digestOf(testerId: string, { instrument, method, controlLine, benchDay, readings, ambient, note }: ControlPullRequest): string {
  const forces = readings.map((reading, index) => readForce(reading, index)).map((read) => ('fault' in read ? null : read.valueSi));
  return sha256(canonicalize([testerId, instrument, method, controlLine, benchDay, forces, ambient ?? null, note]) ?? '');
}

function airOf(ambient: ControlPullRequest['ambient']): Air | null {
  if (!ambient) return null;
  const { temperature, humidityPercent } = ambient;
  const { text, unit, si } = parseQuantityAs(temperature.text, temperature.unit, 'temperature');
  return { temperatureText: text, temperatureUnit: unit, temperatureC: si, humidityPercent };
}

function unknownNames(
  { instrument, controlLine, benchDay }: ControlPullRequest,
  found: {
    rig: (Retirement & { readonly kind: string }) | null;
    line: object | null;
    method: { readonly id: string } | { readonly code: string; readonly detail: string };
  },
): InputFault[] {
  const fault = (pointer: string, code: string, detail: string): InputFault => ({ pointer, code, detail });
  const faults: InputFault[] = [];
  if (!found.rig)
    faults.push(fault('/instrument', 'unknown_instrument', `No instrument has the code "${instrument}". Ask an editor to enter it.`));
  else if (!RIG_KINDS.includes(found.rig.kind))
    faults.push(
      fault(
        '/instrument',
        'not_a_rig',
        `${instrument} does not pull; expected the code of a force gauge or a load frame. Name the one that was pulled on.`,
      ),
    );
  else faults.push(...retiredFault(instrument, benchDay, toRetired(found.rig), '/instrument'));
  if (!found.line)
    faults.push(fault('/controlLine', 'unknown_control_line', `No control line has the code "${controlLine}". Ask an editor to enter it.`));
  if ('code' in found.method) faults.push(fault('/method', found.method.code, found.method.detail));
  return faults;
}
