import { declareProblems } from '../platform/errors/problem.js';

export const roundRobinProblems = declareProblems({
  'round-robins/wrong-state': {
    status: 409,
    title: 'The round robin is not in the state that this needs',
    explains:
      'It goes from planned to open to closed, and never back. An editor opens it (POST /v1/round-robins/{slug}/opening); testers hand in while it is open. Of one that is closed read the report, or plan another.',
  },
  'round-robins/handed-in': {
    status: 409,
    title: 'You have handed in this spool already',
    explains:
      'Each tester pulls each spool once, all of its specimens, and what is handed in stands. Go on with the next spool; if what you handed in is wrong, tell an editor before the round robin closes.',
  },
  'round-robins/too-few': {
    status: 409,
    title: 'Too few have handed in',
    explains:
      'A round robin closes when at least two testers have pulled each spool. The detail names those that lack: remind their testers, who find them at GET /v1/round-robins.',
  },
});
