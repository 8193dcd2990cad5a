import { Injectable } from '@nestjs/common';
import { AccountsReadModel } from '../accounts/accounts.read-model.js';
import { InterestsReadModel } from '../interests/interests.read-model.js';
import { DecisionsReadModel } from '../decisions/decisions.read-model.js';
import { FindingsReadModel } from '../findings/findings.read-model.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { requireSameVersion } from '../platform/http/headers/if-match.js';
import { isKeptByClaim, statesFor } from '../contract/submission-actions.js';
import type { ActionName } from '../contract/submission-actions.js';
import { SubmissionsStore } from '../submissions/submissions.store.js';
import type { SubmissionUnderReview } from './submission-under-review.js';
import { reviewProblems } from './reviews.errors.js';

/** The submission that a decision is about, and the version of it that the decider saw. */
export interface ReviewedSubmission {
  readonly reference: string;
  readonly version: number;
}

/** What every decision begins with: the submission locked, as its decider saw it, in the right state, before a second person without a tie. */
@Injectable()
export class MayReview {
  constructor(
    private readonly store: SubmissionsStore,
    private readonly findings: FindingsReadModel,
    private readonly decisions: DecisionsReadModel,
    private readonly accounts: AccountsReadModel,
    private readonly interests: InterestsReadModel,
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  /** Runs the decision in the transaction that holds the lock. */
  async run(
    actor: Actor,
    { reference, version }: ReviewedSubmission,
    action: ActionName,
    decide: (tx: Transaction, submission: SubmissionUnderReview) => Promise<void>,
  ): Promise<void> {
    await this.requireNoInterest(actor, reference);
    await this.database.transaction(async (tx) => {
      const submission = await this.lock(tx, reference);
      if (!submission) throw new Problem(platformProblems['request/not-found'], `No submission has the reference ${reference}.`);
      requireSecondPerson(actor.accountId, submission.testerId);
      requireSameVersion(submission.version, version);
      requireState(submission, action);
      if (isKeptByClaim(action)) await this.requireUnclaimed(actor, submission);
      await decide(tx, submission);
    });
  }

  /** Null where there is no such submission, or only a draft. */
  private async lock(tx: Transaction, reference: string): Promise<SubmissionUnderReview | null> {
    const locked = await this.store.lock(tx, reference);
    if (!locked || locked.state === 'draft') return null;
    const { id: revisionId, specimens } = await this.store.standing(tx, locked);
    const findings = (await this.findings.ofRevisions([revisionId])).get(revisionId) ?? [];
    return { ...locked, revisionId, specimens, findings };
  }

  /** While a review is claimed, nobody else works on it; the database keeps the same rule (review_is_by_its_claimer). */
  private async requireUnclaimed(actor: Actor, { id }: SubmissionUnderReview): Promise<void> {
    const claim = await this.decisions.claimOf(id, this.clock.now());
    if (!claim || claim.reviewerId === actor.accountId) return;
    const names = await this.accounts.displayNames([claim.reviewerId]);
    const detail = `${names.of(claim.reviewerId)} has claimed this review until ${claim.expiresAt.toISOString()}.`;
    throw new Problem(reviewProblems['reviews/claimed'], detail);
  }

  private async requireNoInterest(actor: Actor, reference: string): Promise<void> {
    if (await this.interests.hasIn(actor.accountId, reference)) throw new Problem(reviewProblems['reviews/declared-interest']);
  }
}

/** A second person decides; the database keeps the same rule (reviewer_is_not_tester). */
function requireSecondPerson(actorId: string, testerId: string): void {
  if (actorId === testerId) throw new Problem(reviewProblems['reviews/own-submission']);
}

function requireState(submission: { reference: string; state: string }, action: ActionName): void {
  const expected = statesFor(action);
  if (expected.some((state) => state === submission.state)) return;
  throw new Problem(
    reviewProblems['reviews/wrong-state'],
    `${submission.reference} is ${submission.state}; expected ${expected.join(' or ')}.`,
  );
}
