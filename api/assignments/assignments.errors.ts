import { declareProblems } from '../platform/errors/problem.js';

export const assignmentProblems = declareProblems({
  'assignments/too-late': {
    status: 409,
    title: 'The edition takes no readings any more',
    explains: 'Work is given out until the edition closes. The detail says where it stands; name an edition that is planned or open.',
  },
});
