import { declareProblems } from '../platform/errors/problem.js';

export const boardProblems = declareProblems({
  'editions/work-in-progress': {
    status: 409,
    title: 'Work in this edition is not finished',
    explains:
      'An edition closes when every submission that was handed in is accepted, refused or withdrawn, no accepted one has a held finding without an answer, and each entry is in one division. The errors list everything that stands in the way, which submissions it is, and what to do; GET /v1/editions/{edition}/board lists the same.',
  },
  'editions/no-such-category': {
    status: 422,
    title: 'There is no such category to plan for',
    explains:
      'A plan is made for one category of the edition’s scheme, or of the scheme of one division, which is named then. The detail lists them; name one of these.',
  },
  'editions/nothing-to-plan-from': {
    status: 409,
    title: 'Too little is accepted to plan from',
    explains:
      'A plan is simulated from what the edition shows: at least two entries need a result that counts in the category, and their submissions must tell how specimens scatter. Have more reviewed first, or ask for the plan of the edition before.',
  },
});
