import { Injectable } from '@nestjs/common';
import { AccountsReadModel } from '../accounts/accounts.read-model.js';
import { InterestsReadModel } from '../interests/interests.read-model.js';
import { DecisionsReadModel } from '../decisions/decisions.read-model.js';
import { Clock } from '../platform/clock/clock.js';
import type { Actor } from '../platform/http/access.js';
import { isAllowed, SUBMISSION_ACTIONS } from '../contract/submission-actions.js';
import type { ActionName, SubmissionAction } from '../contract/submission-actions.js';
import { SubmissionsReadModel } from '../submissions/submissions.read-model.js';
import { SubmissionViewsReadModel } from '../submissions/views/submission-views.read-model.js';

export interface PossibleAction {
  readonly action: ActionName;
  readonly does: string;
  readonly isPossible: boolean;
  /** Why not, or what it needs; null where nothing stands in the way. */
  readonly why: string | null;
  readonly counts: Readonly<Record<string, number>>;
}

/** What somebody can do with a submission now, and why not, with counts: what a blocked button says. */
@Injectable()
export class PossibleActionsReadModel {
  constructor(
    private readonly submissions: SubmissionsReadModel,
    private readonly decisions: DecisionsReadModel,
    private readonly views: SubmissionViewsReadModel,
    private readonly accounts: AccountsReadModel,
    private readonly interests: InterestsReadModel,
    private readonly clock: Clock,
  ) {}

  async of(actor: Actor, reference: string): Promise<PossibleAction[]> {
    const seen = await this.views.one(actor, reference);
    const { id, testerId } = await this.submissions.byReference(reference);
    const isOwn = testerId === actor.accountId;
    const isTied = !isOwn && (await this.interests.hasIn(actor.accountId, reference));
    const claim = await this.claimOfAnother(actor, id);
    const openQueries = seen.queries.filter(({ answer }) => answer === null).length;
    const unanswered = seen.findings.filter(({ severity, resolution }) => severity === 'held' && resolution === null).length;
    const names = (Object.keys(SUBMISSION_ACTIONS) as ActionName[]).filter((name) =>
      SUBMISSION_ACTIONS[name].roles.some((role) => actor.roles.includes(role)),
    );
    return names.map((action) => {
      const { does, states, whose }: SubmissionAction = SUBMISSION_ACTIONS[action];
      const { state } = seen;
      const say = (why: string | null, counts: Record<string, number> = {}, isPossible = why === null) => ({
        action,
        does,
        isPossible,
        why,
        counts,
      });
      if (whose === 'others' && isOwn) return say('A second person does this: it is your own.');
      if (whose === 'own' && !isOwn) return say('Its own tester does this.');
      if (!isAllowed(action, actor.roles, isOwn, state)) return say(`It is ${state}; this is done while it is ${states.join(' or ')}.`);
      if (whose === 'others' && isTied) return say('You declared an interest in the maker of this spool.');
      if (claim && ['claim', 'judge', 'decide'].includes(action))
        return say(`${claim.reviewer} has claimed its review until ${claim.expiresAt.toISOString()}.`);
      if (action === 'handIn' && openQueries > 0) return say('A question waits for your answer.', { openQueries });
      if (action === 'decide' && unanswered > 0)
        return say('To accept it, each held finding needs an answer in words.', { unanswered }, true);
      if (action === 'resolve') return unanswered > 0 ? say(null, { unanswered }) : say('No finding waits for an answer.', { unanswered });
      return say(null);
    });
  }

  private async claimOfAnother(actor: Actor, submissionId: string) {
    const claim = await this.decisions.claimOf(submissionId, this.clock.now());
    if (!claim || claim.reviewerId === actor.accountId) return null;
    const names = await this.accounts.displayNames([claim.reviewerId]);
    return { reviewer: names.of(claim.reviewerId), expiresAt: claim.expiresAt };
  }
}
