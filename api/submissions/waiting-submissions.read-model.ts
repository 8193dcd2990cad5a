import { Injectable } from '@nestjs/common';
import { Database } from '../platform/database/database.js';
import type { Prisma } from '../platform/database/generated/client.js';
import { IN_DOUBT } from './views/submission-views.read-model.js';

/** Submissions that wait for somebody, longest first. */
@Injectable()
export class WaitingSubmissions {
  constructor(private readonly database: Database) {}

  /** A tester's own: returned ones, and references of drafts. */
  async ofTester(testerId: string) {
    const returned = await this.rows({ testerId, state: 'returned' });
    return { returned, drafts: references(await this.rows({ testerId, state: 'draft' })) };
  }

  /** References of others' for a reviewer, without those of spools that the reviewer has a tie to. */
  async forReviewer(reviewerId: string, tiedSpools: readonly string[]) {
    const others: Prisma.SubmissionWhereInput = { testerId: { not: reviewerId }, spoolId: { notIn: [...tiedSpools] } };
    return {
      submitted: references(await this.rows({ ...others, state: 'submitted' })),
      inDoubt: references(await this.rows({ AND: [others, IN_DOUBT] })),
      returned: references(await this.rows({ ...others, state: 'returned' })),
    };
  }

  private rows(where: Prisma.SubmissionWhereInput) {
    return this.database.client.submission.findMany({ where, select: { id: true, reference: true }, orderBy: { createdAt: 'asc' } });
  }
}

const references = (rows: readonly { readonly reference: string }[]): string[] => rows.map(({ reference }) => reference);
