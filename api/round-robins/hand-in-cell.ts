import { Injectable } from '@nestjs/common';
import { InstrumentsReadModel } from '../instruments/instruments.read-model.js';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { readForce } from '../readings/read-force.js';
import { RIG_KINDS } from '../contract/instrument-kinds.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { InputFault } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { notValid } from '../platform/http/validation.js';
import { roundRobinProblems } from './round-robins.errors.js';
import type { CellRequest } from '../contract/endpoints/round-robins.js';
import { RoundRobinsStore } from './round-robins.store.js';

/** Takes what a tester pulled of one spool of a round robin: all of it, once. */
@Injectable()
export class HandInCell {
  constructor(
    private readonly database: Database,
    private readonly store: RoundRobinsStore,
    private readonly instruments: InstrumentsReadModel,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  run(actor: Actor, slug: string, cell: CellRequest): Promise<void> {
    const level = cell.spool.toUpperCase();
    const readings = cell.readings.map(readForce);
    return this.database.transaction(async (tx) => {
      const robin = await this.store.lock(tx, slug);
      if (!robin?.testers.some(({ testerId }) => testerId === actor.accountId))
        throw new Problem(platformProblems['request/not-found'], `No round robin of yours is called ${slug}.`);
      if (robin.state !== 'open')
        throw new Problem(roundRobinProblems['round-robins/wrong-state'], `The round robin ${slug} is ${robin.state}; expected open.`);
      if (robin.cells.some((one) => one.testerId === actor.accountId && one.level === level))
        throw new Problem(
          roundRobinProblems['round-robins/handed-in'],
          `Found ${level} in ${slug}, which you handed in before; expected a spool of it that you have not pulled yet.`,
        );
      const [instrument = null] = await this.instruments.byCodes([cell.instrument]);
      const faults = [...readings.flatMap((read) => ('fault' in read ? [read.fault] : [])), ...planFaults(robin, cell, level, instrument)];
      if (faults.length > 0 || !instrument) throw notValid(faults);
      const stored = readings.flatMap((read) => ('fault' in read ? [] : [read]));
      await this.store.addCell(tx, {
        roundRobinId: robin.id,
        testerId: actor.accountId,
        level,
        instrumentId: instrument.id,
        handedInAt: this.clock.now(),
        readings: stored,
      });
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'roundRobin.handedIn',
        objectType: 'roundRobin',
        objectId: slug,
        after: cell,
      });
    });
  }
}

function planFaults(
  { levels, specimens }: { readonly levels: readonly string[]; readonly specimens: number },
  cell: CellRequest,
  level: string,
  instrument: { readonly kind: string } | null,
): InputFault[] {
  const faults: InputFault[] = [];
  const tell = (pointer: string, code: string, detail: string) => faults.push({ pointer, code, detail });
  if (!levels.includes(level))
    tell('/spool', 'spool_not_in_plan', `Found ${level}; this round robin has ${levels.join(', ')}. Read the code on the spool again.`);
  if (!instrument || !RIG_KINDS.includes(instrument.kind))
    tell(
      '/instrument',
      'not_a_rig',
      `Found ${cell.instrument}; expected the code of a force gauge or a load frame. Name the one that was pulled on.`,
    );
  if (cell.readings.length !== specimens)
    tell(
      '/readings',
      'wrong_count',
      `Found ${cell.readings.length} readings, expected ${specimens}: all specimens of the spool at once. Pull those that are missing, or leave out what is beyond.`,
    );
  return faults;
}
