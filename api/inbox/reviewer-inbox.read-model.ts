import { Injectable } from '@nestjs/common';
import { SpoolRows } from '../catalogue/spools/spool-rows.read-model.js';
import type { InboxItem } from '../contract/endpoints/inbox.js';
import { InterestsReadModel } from '../interests/interests.read-model.js';
import type { Actor } from '../platform/http/access.js';
import { WaitingSubmissions } from '../submissions/waiting-submissions.read-model.js';
import { waiting } from './inbox-words.js';

/** What waits for a reviewer: of other testers, of makers that the reviewer has no interest in. */
@Injectable()
export class ReviewerInbox {
  constructor(
    private readonly interests: InterestsReadModel,
    private readonly spools: SpoolRows,
    private readonly submissions: WaitingSubmissions,
  ) {}

  async of({ accountId }: Actor): Promise<InboxItem[]> {
    const tied = await this.spools.ofMakers(await this.interests.makersOf(accountId));
    const { submitted, inDoubt, returned } = await this.submissions.forReviewer(accountId, tied);
    return [...waiting('reviews_waiting', submitted), ...waiting('doubts_open', inDoubt), ...waiting('returned_to_testers', returned)];
  }
}
