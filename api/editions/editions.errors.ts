import { declareProblems } from '../platform/errors/problem.js';

export const editionProblems = declareProblems({
  'editions/unknown-reference': {
    status: 422,
    title: 'Something that the edition names is not on record',
    explains: 'Scheme, method versions, variants and the edition before must exist. The detail names what is missing.',
  },
  'editions/wrong-state': {
    status: 409,
    title: 'The edition is not in the state that this needs',
    explains: 'An edition goes from planned to open, closed and published. The detail says where it stands and where it should.',
  },
  'editions/nothing-to-open': {
    status: 409,
    title: 'An edition opens with entries and a method for each category',
    explains:
      'The errors list everything that stands in the way and what to do about each; GET /v1/editions/{edition}/board lists the same.',
  },
  'editions/interest': {
    status: 409,
    title: 'You have declared an interest in this maker',
    explains: 'Somebody without a tie to the maker decides on exclusions of its variants.',
  },
});
