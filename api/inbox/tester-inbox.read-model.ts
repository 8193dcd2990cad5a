import { Injectable } from '@nestjs/common';
import { AssignmentsReadModel } from '../assignments/assignments.read-model.js';
import type { InboxItem } from '../contract/endpoints/inbox.js';
import { Database } from '../platform/database/database.js';
import type { Prisma } from '../platform/database/generated/client.js';
import type { Actor } from '../platform/http/access.js';
import { RoundRobinsReadModel } from '../round-robins/round-robins.read-model.js';
import { waiting } from './inbox-item.js';

/** What waits for a tester. It is told from the tester's own work and the entries alone, never from what a spool is or what others did. */
@Injectable()
export class TesterInbox {
  constructor(
    private readonly database: Database,
    private readonly assignments: AssignmentsReadModel,
    private readonly roundRobins: RoundRobinsReadModel,
  ) {}

  async of({ accountId }: Actor): Promise<InboxItem[]> {
    const own = { testerId: accountId };
    const unanswered = { queries: { some: { answeredAt: null } } };
    return [
      ...waiting('queries_open', await this.references({ ...own, state: 'returned', ...unanswered })),
      ...waiting('returned_to_you', await this.references({ ...own, state: 'returned', NOT: unanswered })),
      ...waiting('drafts', await this.references({ ...own, state: 'draft' })),
      ...waiting('assignments_open', await this.asked(accountId)),
      ...waiting('spools_to_pull', await this.spools(accountId)),
      ...waiting('round_robin_cells', await this.roundRobins.waitingFor(accountId)),
    ];
  }

  private async references(where: Prisma.SubmissionWhereInput): Promise<string[]> {
    const rows = await this.database.client.submission.findMany({ where, select: { reference: true }, orderBy: { createdAt: 'asc' } });
    return rows.map(({ reference }) => reference);
  }

  private async asked(testerId: string): Promise<string[]> {
    const open = (await this.assignments.ofTester(testerId)).filter(({ handedIn }) => handedIn === null);
    return [...new Set(open.map(({ spool }) => spool))];
  }

  private async spools(testerId: string): Promise<string[]> {
    const rows = await this.database.client.spool.findMany({
      where: { variant: { entries: { some: { edition: { state: 'open' } } } }, submissions: { none: { testerId, revision: { gt: 0 } } } },
      select: { blindCode: true },
      orderBy: { blindCode: 'asc' },
    });
    return rows.map(({ blindCode }) => blindCode);
  }
}
