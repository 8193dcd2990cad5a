import { Injectable } from '@nestjs/common';
import { normaliseBlindCode } from '../contract/blind-code.js';
import type { AssignmentRequest } from '../contract/endpoints/assignments.js';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { InputFault } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { notValid } from '../platform/http/validation.js';
import { assignmentProblems } from './assignments.errors.js';
import { AssignmentsStore } from './assignments.store.js';

/** Asks a tester to pull spools by a method, and takes that back. */
@Injectable()
export class Assign {
  constructor(
    private readonly database: Database,
    private readonly store: AssignmentsStore,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, slug: string, { tester, method, spools, specimens, dueOn }: AssignmentRequest): Promise<void> {
    const codes = spools.map(normaliseBlindCode);
    await this.database.transaction(async (tx) => {
      const edition = await this.store.edition(tx, slug);
      if (!edition) throw new Problem(platformProblems['request/not-found'], `No edition is called ${slug}.`);
      if (edition.state !== 'planned' && edition.state !== 'open')
        throw new Problem(assignmentProblems['assignments/too-late'], `The edition ${slug} is ${edition.state}.`);
      const pinned = edition.methods.find(({ methodVersion }) => methodVersion.method.slug === method)?.methodVersion.method;
      const known = await this.store.spools(tx, codes);
      const standing = pinned && (await this.store.standing(tx, { editionId: edition.id, methodId: pinned.id, testerId: tester }));
      const faults: InputFault[] = [
        ...((await this.store.isTester(tx, tester))
          ? []
          : [{ pointer: '/tester', code: 'not_a_tester', detail: 'Nobody of this id is a tester; GET /v1/testers lists them.' }]),
        ...(pinned ? [] : [{ pointer: '/method', code: 'not_pinned', detail: `The edition ${slug} is not tested by "${method}".` }]),
        ...codes.flatMap((code, index) =>
          spoolFaults(`/spools/${index}`, { code, isTwice: codes.indexOf(code) < index, id: known.get(code), standing }),
        ),
      ];
      if (faults.length > 0 || !pinned) throw notValid(faults);
      const work = {
        editionId: edition.id,
        methodId: pinned.id,
        testerId: tester,
        specimens,
        dueOn: dueOn === null ? null : new Date(dueOn),
      };
      await this.store.give(
        tx,
        [...known.values()].map((spoolId) => ({ ...work, spoolId, givenAt: this.clock.now() })),
      );
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'assignments.given',
        objectType: 'edition',
        objectId: slug,
        after: { tester, method, spools: codes, specimens, dueOn },
      });
    });
  }

  async takeBack(actor: Actor, id: string): Promise<void> {
    await this.database.transaction(async (tx) => {
      if (!(await this.store.takeBack(tx, id, this.clock.now())))
        throw new Problem(platformProblems['request/not-found'], `No assignment that stands has the id ${id}.`);
      await this.audit.record(tx, { actorId: actor.accountId, action: 'assignment.takenBack', objectType: 'assignment', objectId: id });
    });
  }
}

interface Asked {
  readonly code: string;
  readonly isTwice: boolean;
  readonly id: string | undefined;
  readonly standing: ReadonlySet<string> | undefined;
}

function spoolFaults(pointer: string, { code, isTwice, id, standing }: Asked): InputFault[] {
  if (isTwice) return [{ pointer, code: 'duplicate', detail: `${code} is named twice; name it once.` }];
  if (id === undefined) return [{ pointer, code: 'spool_unknown', detail: `No spool carries the code ${code}.` }];
  if (standing?.has(id) === true)
    return [
      {
        pointer,
        code: 'duplicate',
        detail: `The tester is asked for ${code} by this method already; take that back first to ask otherwise.`,
      },
    ];
  return [];
}
