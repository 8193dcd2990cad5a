import { declareProblems } from '../platform/errors/problem.js';

export const retestProblems = declareProblems({
  'retests/drawn': {
    status: 409,
    title: 'This edition has its draw',
    explains:
      'Results are drawn once an edition: a second draw could be made until one likes it. Read the one that stands: GET /v1/editions/{edition}/retests.',
  },
  'retests/nothing-to-draw': {
    status: 409,
    title: 'There is nothing to draw from',
    explains:
      'Results to be tested again are drawn while the edition is open, from accepted submissions of pulls. Have some accepted first.',
  },
});
