import { declareProblems } from '../platform/errors/problem.js';

export const boardProblems = declareProblems({
  'editions/work-in-progress': {
    status: 409,
    title: 'Work in this edition is not finished',
    explains:
      'An edition closes when every submission that was handed in is accepted, refused or withdrawn, and no accepted one has a held finding without an answer. The errors list everything that stands in the way, which submissions it is, and what to do; GET /v1/editions/{edition}/board lists the same.',
  },
});
