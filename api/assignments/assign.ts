import { Injectable } from '@nestjs/common';
import { AccountsReadModel } from '../accounts/accounts.read-model.js';
import { SpoolRows } from '../catalogue/spools/spool-rows.read-model.js';
import { normaliseBlindCode } from '../contract/blind-code.js';
import type { AssignmentRequest } from '../contract/endpoints/assignments.js';
import { EditionRows } from '../editions/edition-rows.read-model.js';
import { EditionsReadModel } from '../editions/editions.read-model.js';
import { MethodsReadModel } from '../methods/methods.read-model.js';
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
    private readonly accounts: AccountsReadModel,
    private readonly spools: SpoolRows,
    private readonly rows: EditionRows,
    private readonly editions: EditionsReadModel,
    private readonly methods: MethodsReadModel,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, slug: string, request: AssignmentRequest): Promise<void> {
    const { method, specimens, dueOn, ...asked } = request;
    const codes = asked.spools.map(normaliseBlindCode);
    const askedMethod = await this.methods.idOf(method);
    await this.database.transaction(async (tx) => {
      await this.rows.hold(tx, slug);
      const edition = await this.editions.openEdition(slug);
      if (!edition) throw new Problem(platformProblems['request/not-found'], `No edition is called ${slug}.`);
      if (edition.state !== 'planned' && edition.state !== 'open')
        throw new Problem(assignmentProblems['assignments/too-late'], `The edition ${slug} is ${edition.state}.`);
      const pinned = await this.methods.versionRows(edition.methodVersionIds);
      const methodId = [...pinned.values()].find((version) => version.methodId === askedMethod)?.methodId ?? null;
      const work = { editionId: edition.id, methodId, testerId: asked.tester };
      const known = await this.spools.inUse(codes);
      const testers = await this.accounts.testersAmong([asked.tester]);
      const faults: InputFault[] = [
        ...(testers.has(asked.tester) ? [] : [NOT_A_TESTER]),
        ...(methodId === null
          ? [
              {
                pointer: '/method',
                code: 'not_pinned',
                detail: `The edition ${slug} is not tested by "${method}". Name a method that it pins.`,
              },
            ]
          : []),
        ...spoolFaults(codes, known, await this.store.standing(tx, work)),
      ];
      if (faults.length > 0 || methodId === null) throw notValid(faults);
      const given = { ...work, methodId, specimens, dueOn: dueOn === null ? null : new Date(dueOn), givenAt: this.clock.now() };
      await this.store.give(
        tx,
        [...known.values()].map((spoolId) => ({ ...given, spoolId })),
      );
      const after = { ...request, spools: codes };
      await this.audit.record(tx, { actorId: actor.accountId, action: 'assignments.given', objectType: 'edition', objectId: slug, after });
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

const NOT_A_TESTER: InputFault = {
  pointer: '/tester',
  code: 'not_a_tester',
  detail: 'Nobody of this id is a tester. Look the id up: GET /v1/testers.',
};

const spoolFaults = (codes: readonly string[], known: ReadonlyMap<string, string>, standing: ReadonlySet<string>): InputFault[] =>
  codes.flatMap((code, index) => {
    const pointer = `/spools/${index}`;
    const id = known.get(code);
    if (codes.indexOf(code) < index) return [{ pointer, code: 'duplicate', detail: `${code} is named twice; name it once.` }];
    if (id === undefined)
      return [{ pointer, code: 'spool_unknown', detail: `No spool in use carries the code ${code}. Look it up in the list of spools.` }];
    if (!standing.has(id)) return [];
    const detail = `The tester is asked for ${code} by this method already; take that back first to ask otherwise.`;
    return [{ pointer, code: 'duplicate', detail }];
  });
