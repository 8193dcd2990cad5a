import type { InboxItem } from '../contract/endpoints/inbox.js';

type Code = InboxItem['code'];
type Words = Pick<InboxItem, 'role' | 'what' | 'where'>;

/** Days before its last one that a certificate without a successor is told of. */
export const DAYS_AHEAD = 30;

const WORDS: Readonly<Record<Code, Words>> = {
  queries_open: {
    role: 'tester',
    what: 'A reviewer asks something',
    where: 'Read it at GET /v1/queries, answer it at POST /v1/queries/{id}/answer.',
  },
  returned_to_you: {
    role: 'tester',
    what: 'Returned and answered, not handed in again',
    where: 'Hand it in as its next revision: POST /v1/submissions/{reference}/revisions.',
  },
  drafts: {
    role: 'tester',
    what: 'Drafts',
    where: 'Hand in: POST /v1/submissions/{reference}/revisions; or take away: DELETE /v1/drafts/{reference}.',
  },
  assignments_open: {
    role: 'tester',
    what: 'Spools that an editor asks you to pull',
    where: 'GET /v1/assignments says by which method, how many and until when; hand in at POST /v1/submissions.',
  },
  spools_to_pull: {
    role: 'tester',
    what: 'Spools of open editions of which you have handed in nothing',
    where: 'Ask an editor which are yours; hand in at POST /v1/submissions.',
  },
  round_robin_cells: {
    role: 'tester',
    what: 'Round robins that wait for your readings',
    where: 'POST /v1/round-robins/{slug}/cells.',
  },
  reviews_waiting: {
    role: 'reviewer',
    what: 'Handed in and not decided',
    where: 'GET /v1/review-queue, then POST /v1/submissions/{reference}/reviews.',
  },
  doubts_open: {
    role: 'reviewer',
    what: 'Accepted, with a held finding that came up afterwards',
    where: 'POST /v1/submissions/{reference}/findings/{id}/resolution; or propose its withdrawal: POST /v1/proposals.',
  },
  returned_to_testers: {
    role: 'reviewer',
    what: 'Returned to their testers',
    where: 'One that will not come back is closed with a reason: POST /v1/submissions/{reference}/closure.',
  },
  proposals_open: {
    role: 'editor',
    what: 'Proposals of others',
    where: 'GET /v1/proposals?state=open; carry out where it belongs, or decline: POST /v1/proposals/{id}/refusal.',
  },
  openings_due: {
    role: 'editor',
    what: 'Planned editions whose opening day has come',
    where: 'POST /v1/editions/{edition}/opening.',
  },
  closings_due: {
    role: 'editor',
    what: 'Open editions whose closing day is over',
    where: 'POST /v1/editions/{edition}/closure; GET /v1/editions/{edition}/board tells what stands in the way.',
  },
  releases_due: {
    role: 'editor',
    what: 'Closed editions that are not published',
    where: 'POST /v1/editions/{edition}/releases.',
  },
  corrections_due: {
    role: 'editor',
    what: 'Published editions of which something was withdrawn, re-identified or superseded since',
    where: 'POST /v1/editions/{edition}/releases with an erratum; POST /v1/editions/{edition}/previews tells what changes.',
  },
  retests_open: {
    role: 'editor',
    what: 'Spools to be tested again that nobody has',
    where: 'Hand them to a tester who did not pull them before.',
  },
  certificates_ending: {
    role: 'editor',
    what: `Instruments without a certificate for all of the next ${DAYS_AHEAD} days`,
    where: 'POST /v1/instruments/{code}/calibrations.',
  },
  webhooks_paused: {
    role: 'admin',
    what: 'Integrators that are told nothing: every attempt of days failed, or somebody paused them',
    where: 'GET /v1/webhooks says why; when the address is well again: DELETE /v1/webhooks/{id}/pause.',
  },
  invitations_open: {
    role: 'admin',
    what: 'Invitations that nobody has taken up',
    where: 'Ask who was invited; an invitation ends by itself, another is made at POST /v1/invitations.',
  },
};

const MOST = 50;

/** An item of an inbox; none where nothing waits. */
export const waiting = (code: Code, references: readonly string[]): InboxItem[] =>
  references.length === 0 ? [] : [{ code, ...WORDS[code], count: references.length, references: references.slice(0, MOST) }];
