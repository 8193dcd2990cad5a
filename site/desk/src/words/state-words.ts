import type { SubmissionState } from '../../../../api/contract/submission-states.js';

export const STATES: Readonly<Record<SubmissionState, string>> = {
  draft: 'begun',
  submitted: 'waits for its reviewer',
  accepted: 'accepted',
  returned: 'came back with a question',
  refused: 'refused',
  takenBack: 'taken back by its tester',
  withdrawn: 'withdrawn',
};
