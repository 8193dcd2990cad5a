import { declareProblems } from '../platform/errors/problem.js';

export const boardProblems = declareProblems({
  'editions/work-in-progress': {
    status: 409,
    title: 'Submissions still wait',
    explains:
      'Every submission that was handed in is accepted, refused or withdrawn before an edition closes. The detail gives the counts.',
  },
  'editions/in-doubt': {
    status: 409,
    title: 'Accepted submissions are in doubt',
    explains:
      'A finding that came up after the acceptance, such as a rig out of control, is answered by a reviewer in words, or the submission is withdrawn. The detail gives the count.',
  },
});
