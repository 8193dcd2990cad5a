import { Injectable } from '@nestjs/common';
import { AccountsReadModel } from '../accounts/accounts.read-model.js';
import { SpoolRows } from '../catalogue/spools/spool-rows.read-model.js';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { MethodsReadModel } from '../methods/methods.read-model.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { InputFault } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { requireSameVersion } from '../platform/http/headers/if-match.js';
import { notValid } from '../platform/http/validation.js';
import { roundRobinProblems } from './round-robins.errors.js';
import type { RoundRobinRequest } from '../contract/endpoints/round-robins.js';
import { RoundRobinsStore } from './round-robins.store.js';

/** Plans a round robin, opens it for its testers, and closes it when enough is there. */
@Injectable()
export class PlanRoundRobin {
  constructor(
    private readonly database: Database,
    private readonly store: RoundRobinsStore,
    private readonly accounts: AccountsReadModel,
    private readonly spools: SpoolRows,
    private readonly methods: MethodsReadModel,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, { method: slug, spools, testers, ...plan }: RoundRobinRequest): Promise<void> {
    const levels = spools.map((code) => code.toUpperCase());
    const method = await this.methods.pullMethod(slug);
    return this.database.transaction(async (tx) => {
      if (await this.store.lock(tx, plan.slug)) {
        const detail = `A round robin is called "${plan.slug}" already. Choose another slug.`;
        throw new Problem(platformProblems['record/already-exists'], detail, [{ pointer: '/slug', detail, code: 'duplicate' }]);
      }
      const [known, people] = [await this.spools.inUse(levels), await this.accounts.testersAmong(testers)];
      const faults: InputFault[] = [
        ...('code' in method ? [{ pointer: '/method', ...method }] : []),
        ...strangers('/spools', levels, known, 'spool_unknown', 'No spool in use carries this code. Look it up in the list of spools.'),
        ...strangers('/testers', testers, people, 'not_a_tester', 'Nobody of this id is a tester. Look the id up: GET /v1/testers.'),
      ];
      if (faults.length > 0 || 'code' in method) throw notValid(faults);
      await this.store.plan(tx, { ...plan, methodId: method.id, levels, testerIds: testers });
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'roundRobin.planned',
        objectType: 'roundRobin',
        objectId: plan.slug,
        after: { ...plan, levels, testers },
      });
    });
  }

  move(actor: Actor, slug: string, version: number, to: 'open' | 'closed'): Promise<void> {
    return this.database.transaction(async (tx) => {
      const robin = await this.store.lock(tx, slug);
      if (!robin) throw new Problem(platformProblems['request/not-found'], `No round robin is called ${slug}.`);
      requireSameVersion(robin.version, version);
      const expected = to === 'open' ? 'planned' : 'open';
      if (robin.state !== expected)
        throw new Problem(
          roundRobinProblems['round-robins/wrong-state'],
          `The round robin ${slug} is ${robin.state}; expected ${expected}.`,
        );
      const lacking = robin.levels.filter((level) => robin.cells.filter((cell) => cell.level === level).length < 2);
      if (to === 'closed' && lacking.length > 0)
        throw new Problem(roundRobinProblems['round-robins/too-few'], `Fewer than two testers have pulled ${lacking.join(', ')}.`);
      await this.store.moveTo(tx, robin.id, to, to === 'closed' ? this.clock.now() : null);
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: `roundRobin.${to === 'open' ? 'opened' : 'closed'}`,
        objectType: 'roundRobin',
        objectId: slug,
      });
    });
  }
}

const strangers = (
  pointer: string,
  named: readonly string[],
  known: { has(one: string): boolean },
  code: string,
  detail: string,
): InputFault[] =>
  named.flatMap((one, index) => {
    if (named.indexOf(one) < index)
      return [{ pointer: `${pointer}/${index}`, code: 'duplicate', detail: 'It is named twice; name it once.' }];
    return known.has(one) ? [] : [{ pointer: `${pointer}/${index}`, code, detail }];
  });
