import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Database } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { notValid } from '../platform/http/validation.js';
import { readRange } from './instrument.js';
import type { InstrumentRequest } from '../contract/endpoints/instruments.js';
import { InstrumentsStore } from './instruments.store.js';

/** Puts an instrument on record with its range and resolution, as entered and in SI. */
@Injectable()
export class AddInstrument {
  constructor(
    private readonly database: Database,
    private readonly store: InstrumentsStore,
    private readonly audit: AuditTrail,
  ) {}

  run(actor: Actor, input: InstrumentRequest): Promise<void> {
    const range = requireRange(input);
    return this.database.transaction(async (tx) => {
      const { code, kind, name } = input;
      if (await this.store.lock(tx, code)) throw codeTaken(code);
      await this.store.create(tx, { code, kind, name, ...range });
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'instrument.added',
        objectType: 'instrument',
        objectId: code,
        after: input,
      });
    });
  }
}

function requireRange(input: InstrumentRequest) {
  const capacity = readRange(input.kind, input.capacity, '/capacity');
  const resolution = readRange(input.kind, input.resolution, '/resolution');
  if ('fault' in capacity || 'fault' in resolution)
    throw notValid([capacity, resolution].flatMap((read) => ('fault' in read ? [read.fault] : [])));
  if (Number(resolution.quantity.si) >= Number(capacity.quantity.si)) {
    const detail = `Found a resolution of ${input.resolution.text} ${input.resolution.unit} with a capacity of ${input.capacity.text} ${input.capacity.unit}; expected a smaller one. Correct one of the two.`;
    throw notValid([{ pointer: '/resolution/text', detail, code: 'not_below_capacity' }]);
  }
  return {
    capacityText: capacity.quantity.text,
    capacityUnit: capacity.quantity.unit,
    capacitySi: capacity.quantity.si,
    resolutionText: resolution.quantity.text,
    resolutionUnit: resolution.quantity.unit,
    resolutionSi: resolution.quantity.si,
  };
}

function codeTaken(code: string): Problem {
  const detail = `An instrument with the code "${code}" is on record. Choose another code.`;
  return new Problem(platformProblems['record/already-exists'], detail, [{ pointer: '/code', detail, code: 'duplicate' }]);
}
