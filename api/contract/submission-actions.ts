/**
 * Who may do what with a submission, and in which states: the guards look here, the API answers it as documentation
 * (GET /v1/submission-actions), and a test walks every cell of it.
 */
import type { Role } from './roles.js';
import type { SubmissionState } from './submission-states.js';

/** Whose submissions an action is for. */
export type Whose = 'own' | 'others' | 'any';

export interface SubmissionAction {
  readonly method: 'GET' | 'POST' | 'PUT' | 'DELETE';
  /** Below /v1. */
  readonly path: string;
  readonly roles: readonly Role[];
  readonly whose: Whose;
  readonly states: readonly SubmissionState[];
  /** What it does, a sentence. */
  readonly does: string;
}

const HANDED_IN = ['submitted', 'accepted', 'returned', 'refused', 'takenBack', 'withdrawn'] as const;
const EVERY = ['draft', ...HANDED_IN] as const;
const BELOW = 'submissions/:reference';

export const SUBMISSION_ACTIONS = {
  readOwn: { method: 'GET', path: BELOW, roles: ['tester'], whose: 'own', states: EVERY, does: 'Read it.' },
  read: { method: 'GET', path: BELOW, roles: ['reviewer', 'editor'], whose: 'any', states: HANDED_IN, does: 'Read it.' },
  save: {
    method: 'PUT',
    path: 'drafts/:reference',
    roles: ['tester'],
    whose: 'own',
    states: ['draft'],
    does: 'Save what was typed since.',
  },
  delete: { method: 'DELETE', path: 'drafts/:reference', roles: ['tester'], whose: 'own', states: ['draft'], does: 'Take it away.' },
  handIn: {
    method: 'POST',
    path: `${BELOW}/revisions`,
    roles: ['tester'],
    whose: 'own',
    states: ['draft', 'returned'],
    does: 'Hand it in, or again as the next revision.',
  },
  takeBack: {
    method: 'POST',
    path: `${BELOW}/taking-back`,
    roles: ['tester'],
    whose: 'own',
    states: ['submitted', 'returned'],
    does: 'Take it back, until a reviewer has claimed or judged it, or after it was returned; it stays on record.',
  },
  addTraces: {
    method: 'POST',
    path: `${BELOW}/traces`,
    roles: ['tester'],
    whose: 'own',
    states: ['submitted'],
    does: 'Add records of its pulls.',
  },
  claim: {
    method: 'POST',
    path: `${BELOW}/claim`,
    roles: ['reviewer'],
    whose: 'others',
    states: ['submitted'],
    does: 'Take its review upon oneself.',
  },
  judge: {
    method: 'POST',
    path: `${BELOW}/judgements`,
    roles: ['reviewer'],
    whose: 'others',
    states: ['submitted'],
    does: 'Judge it before earlier results are shown.',
  },
  decide: {
    method: 'POST',
    path: `${BELOW}/reviews`,
    roles: ['reviewer'],
    whose: 'others',
    states: ['submitted'],
    does: 'Accept, return or refuse it.',
  },
  close: {
    method: 'POST',
    path: `${BELOW}/closure`,
    roles: ['reviewer', 'editor'],
    whose: 'others',
    states: ['returned'],
    does: 'Refuse what was returned and will not come back, with the reason.',
  },
  withdraw: {
    method: 'POST',
    path: `${BELOW}/withdrawal`,
    roles: ['editor'],
    whose: 'others',
    states: ['accepted'],
    does: 'Take it out of the results.',
  },
  resolve: {
    method: 'POST',
    path: `${BELOW}/findings/:id/resolution`,
    roles: ['reviewer'],
    whose: 'others',
    states: ['accepted'],
    does: 'Answer a finding that came up afterwards.',
  },
} as const satisfies Record<string, SubmissionAction>;

export type ActionName = keyof typeof SUBMISSION_ACTIONS;

/** States in which an action is done. */
export const statesFor = (action: ActionName): readonly SubmissionState[] => SUBMISSION_ACTIONS[action].states;

/** Whether a claim keeps it for the reviewer who holds the claim: all that others do with a submission that waits. */
export function isKeptByClaim(action: ActionName): boolean {
  const { whose, states }: SubmissionAction = SUBMISSION_ACTIONS[action];
  return whose === 'others' && states.includes('submitted');
}

/** Whether the table allows an action: role, whose it is, state. */
export function isAllowed(action: ActionName, roles: readonly Role[], isOwn: boolean, state: SubmissionState): boolean {
  const row: SubmissionAction = SUBMISSION_ACTIONS[action];
  const isTheirs = row.whose === 'any' || (row.whose === 'own') === isOwn;
  return row.roles.some((role) => roles.includes(role)) && isTheirs && row.states.includes(state);
}
