/** Every kind of problem that the API answers with; the site's page is built from it. */
import { accountProblems } from './accounts/accounts.errors.js';
import { assignmentProblems } from './assignments/assignments.errors.js';
import { boardProblems } from './board/board.errors.js';
import { controlPullProblems } from './control-pulls/control-pulls.errors.js';
import { interestProblems } from './interests/interests.errors.js';
import { editionProblems } from './editions/editions.errors.js';
import { photoProblems } from './photos/photos.errors.js';
import { platformProblems } from './platform/errors/platform.errors.js';
import type { ProblemKind } from './platform/errors/problem.js';
import { proposalProblems } from './proposals/proposals.errors.js';
import { releaseProblems } from './releases/releases.errors.js';
import { retestProblems } from './retests/retests.errors.js';
import { reviewProblems } from './reviews/reviews.errors.js';
import { roundRobinProblems } from './round-robins/round-robins.errors.js';
import { statementProblems } from './statements/statements.errors.js';
import { submissionProblems } from './submissions/submissions.errors.js';
import { webhookProblems } from './webhooks/webhooks.errors.js';

export const ERROR_CATALOGUE: readonly ProblemKind[] = [
  platformProblems,
  accountProblems,
  proposalProblems,
  interestProblems,
  controlPullProblems,
  assignmentProblems,
  roundRobinProblems,
  submissionProblems,
  photoProblems,
  reviewProblems,
  retestProblems,
  editionProblems,
  boardProblems,
  statementProblems,
  releaseProblems,
  webhookProblems,
].flatMap((kinds): ProblemKind[] => Object.values(kinds));

/** The catalogue as it is published. */
export const problemsAnswer = () => ({
  items: ERROR_CATALOGUE.map(({ code, status, title, explains }) => ({ code, status, title, explains })),
  nextCursor: null,
});
