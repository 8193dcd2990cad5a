/** What each role has done and has to do next, from what is on record. */
import { accountsResponse, invitationsResponse } from '../../../../api/contract/endpoints/accounts.js';
import { controlLinesResponse, rigsResponse } from '../../../../api/contract/endpoints/control-pulls.js';
import { workingEditionsResponse } from '../../../../api/contract/endpoints/editions.js';
import { schemesResponse } from '../../../../api/contract/endpoints/schemes.js';
import { instrumentsResponse } from '../../../../api/contract/endpoints/instruments.js';
import { methodsResponse } from '../../../../api/contract/endpoints/methods.js';
import { queriesResponse, queueResponse } from '../../../../api/contract/endpoints/reviews.js';
import { houseStatementResponse } from '../../../../api/contract/endpoints/statements.js';
import { spoolsResponse } from '../../../../api/contract/endpoints/spools.js';
import { submissionsResponse } from '../../../../api/contract/endpoints/submissions.js';
import type { Role } from '../../../../api/contract/roles.js';
import type { Account } from '../frame/account.js';
import { ask } from '../http/ask.js';

export interface Step {
  readonly words: string;
  /** What is there already, or why it matters. */
  readonly told: string;
  readonly path: string;
  readonly isDone: boolean;
}

const step = (words: string, path: string, isDone: boolean, told = ''): Step => ({ words, path, isDone, told });

export async function stepsFor({ roles }: Account): Promise<Step[]> {
  const lists = { admin: ofAdmin, editor: ofEditor, tester: ofTester, reviewer: ofReviewer };
  const order: readonly Role[] = ['admin', 'editor', 'tester', 'reviewer'];
  return (await Promise.all(order.filter((role) => roles.includes(role)).map((role) => lists[role]()))).flat();
}

async function ofAdmin(): Promise<Step[]> {
  const [accounts, invitations] = await Promise.all([
    ask(accountsResponse, 'GET', 'accounts'),
    ask(invitationsResponse, 'GET', 'invitations'),
  ]);
  const invite = (role: Role, why: string) => {
    const here = accounts.items.filter(({ roles, isDisabled }) => roles.includes(role) && !isDisabled).length;
    const isInvited = invitations.items.some(({ roles }) => roles.includes(role));
    return step(
      `Invite ${role === 'editor' ? 'an editor' : `a ${role}`}`,
      '/desk/house/',
      here > 0 || isInvited,
      here > 0 ? `${here} here` : isInvited ? 'Invited; the invitation is not taken up yet.' : why,
    );
  };
  return [
    step('Your own account', '/desk/account/', true),
    invite('editor', 'Sets up methods, catalogue and edition.'),
    invite('tester', 'Pulls, and hands in.'),
    invite('reviewer', 'Looks at what testers hand in; nobody reviews their own.'),
  ];
}

async function ofEditor(): Promise<Step[]> {
  const [instruments, methods, lines, spools, schemes, editions, accepted, house] = await Promise.all([
    ask(instrumentsResponse, 'GET', 'instruments'),
    ask(methodsResponse, 'GET', 'catalogue/methods'),
    ask(controlLinesResponse, 'GET', 'control-lines'),
    ask(spoolsResponse, 'GET', 'catalogue/spools?limit=1'),
    ask(schemesResponse, 'GET', 'schemes'),
    ask(workingEditionsResponse, 'GET', 'bench/editions'),
    ask(submissionsResponse, 'GET', 'submissions?state=accepted&limit=1'),
    ask(houseStatementResponse, 'GET', 'house-statement'),
  ]);
  const has = (state: string[]) => editions.items.some((edition) => state.includes(edition.state));
  const current = editions.items.at(-1);
  const season = current ? `/desk/season/?edition=${current.slug}` : '/desk/season/';
  return [
    step(
      'Instruments and their certificates',
      '/desk/methods/',
      instruments.items.some(({ calibrations }) => calibrations.length > 0),
    ),
    step(
      'Methods',
      '/desk/methods/',
      methods.items.some(({ versions }) => versions.length > 0),
    ),
    step('A control line', '/desk/methods/', lines.items.length > 0),
    step('Lines, claims, spools and labels', '/desk/catalogue/', spools.items.length > 0),
    step('A scheme', '/desk/season/', schemes.items.length > 0),
    step('Plan an edition', '/desk/season/', editions.items.length > 0),
    step('Entries, then the opening', season, has(['open', 'closed', 'published'])),
    step('First results', season, accepted.items.length > 0, 'Testers hand in, reviewers accept; the board says what lacks.'),
    step('Say who you are', '/desk/statements/', house.missing.length === 0, 'Readers get it with the first release.'),
    step('Close and publish', season, has(['published'])),
  ];
}

async function ofTester(): Promise<Step[]> {
  const [rigs, own, queries] = await Promise.all([
    ask(rigsResponse, 'GET', 'rigs'),
    ask(submissionsResponse, 'GET', 'submissions?limit=50'),
    ask(queriesResponse, 'GET', 'queries'),
  ]);
  const open = queries.items.filter(({ answer }) => answer === null).length;
  const begun = own.items.filter(({ state }) => state === 'draft').length;
  return [
    ...(open > 0 ? [step(open === 1 ? 'Answer a question' : `Answer ${open} questions`, '/desk/submissions/', false)] : []),
    step(
      'Control pull',
      '/desk/bench/',
      rigs.items.some(({ lastPullOn }) => lastPullOn !== null),
      'Begins every bench day.',
    ),
    step(
      'Hand in readings',
      '/desk/bench/',
      own.items.some(({ state }) => state !== 'draft'),
      begun > 0 ? `${begun} sheets are begun.` : '',
    ),
  ];
}

async function ofReviewer(): Promise<Step[]> {
  const [queue, doubts] = await Promise.all([
    ask(queueResponse, 'GET', 'review-queue?limit=1'),
    ask(submissionsResponse, 'GET', 'submissions?inDoubt=true&limit=1'),
  ]);
  return [
    step('Review what waits', '/desk/review/', queue.items.length === 0, queue.items.length === 0 ? 'Nothing waits.' : ''),
    step(
      'Answer doubts about accepted ones',
      '/desk/review/',
      doubts.items.length === 0,
      doubts.items.length === 0 ? 'There are none.' : '',
    ),
  ];
}
