import { declareProblems } from '../platform/errors/problem.js';

export const roundRobinProblems = declareProblems({
  'round-robins/wrong-state': {
    status: 409,
    title: 'The round robin is not in the state that this needs',
    explains: 'It goes from planned to open to closed. Testers hand in while it is open.',
  },
  'round-robins/handed-in': {
    status: 409,
    title: 'You have handed in this spool already',
    explains: 'Each tester pulls each spool once, all of its specimens, and what is handed in stands.',
  },
  'round-robins/too-few': {
    status: 409,
    title: 'Too few have handed in',
    explains: 'A round robin closes when at least two testers have pulled each spool. The detail names those that lack.',
  },
});
