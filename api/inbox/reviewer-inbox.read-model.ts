import { Injectable } from '@nestjs/common';
import type { InboxItem } from '../contract/endpoints/inbox.js';
import { Database } from '../platform/database/database.js';
import type { Prisma } from '../platform/database/generated/client.js';
import type { Actor } from '../platform/http/access.js';
import { IN_DOUBT } from '../submissions/views/submission-views.read-model.js';
import { waiting } from './inbox-item.js';

/** What waits for a reviewer: of other testers, of makers that the reviewer has no interest in. */
@Injectable()
export class ReviewerInbox {
  constructor(private readonly database: Database) {}

  async of({ accountId }: Actor): Promise<InboxItem[]> {
    const interests = await this.database.client.declaredInterest.findMany({ where: { accountId }, select: { makerId: true } });
    const others: Prisma.SubmissionWhereInput = {
      testerId: { not: accountId },
      spool: { variant: { line: { makerId: { notIn: interests.map(({ makerId }) => makerId) } } } },
    };
    return [
      ...waiting('reviews_waiting', await this.references({ ...others, state: 'submitted' })),
      ...waiting('doubts_open', await this.references({ AND: [others, IN_DOUBT] })),
      ...waiting('returned_to_testers', await this.references({ ...others, state: 'returned' })),
    ];
  }

  private async references(where: Prisma.SubmissionWhereInput): Promise<string[]> {
    const rows = await this.database.client.submission.findMany({ where, select: { reference: true }, orderBy: { createdAt: 'asc' } });
    return rows.map(({ reference }) => reference);
  }
}
