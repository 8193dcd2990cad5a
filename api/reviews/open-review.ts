import { Injectable } from '@nestjs/common';
import { AccountsReadModel } from '../accounts/accounts.read-model.js';
import { CatalogueReadModel } from '../catalogue/catalogue.read-model.js';
import type { Transaction } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { requireSameVersion } from '../platform/http/if-match.js';
import { requireSecondPerson, requireState } from './review.js';
import type { SubmissionUnderReview } from './review.js';
import { reviewProblems } from './reviews.errors.js';
import { ReviewsStore } from './reviews.store.js';

/** What every decision begins with: the submission locked, as its decider saw it, in the right state, before a second person without a tie. */
@Injectable()
export class OpenReview {
  constructor(
    private readonly store: ReviewsStore,
    private readonly accounts: AccountsReadModel,
    private readonly catalogue: CatalogueReadModel,
  ) {}

  async run(tx: Transaction, actor: Actor, reference: string, version: number, expected: 'submitted' | 'accepted'): Promise<SubmissionUnderReview> {
    const submission = await this.store.lock(tx, reference);
    if (!submission) throw new Problem(platformProblems['request/not-found'], `No submission has the reference ${reference}.`);
    requireSecondPerson(actor.accountId, submission.testerId);
    requireSameVersion(submission.version, version);
    requireState(submission, expected);
    await this.requireNoInterest(actor, submission.spoolCode);
    return submission;
  }

  private async requireNoInterest(actor: Actor, spoolCode: string): Promise<void> {
    const spool = await this.catalogue.spoolByCode(spoolCode);
    if (spool && (await this.accounts.hasInterest(actor.accountId, spool.variant.makerId))) throw new Problem(reviewProblems['reviews/declared-interest']);
  }
}
