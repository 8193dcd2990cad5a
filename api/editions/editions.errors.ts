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
  'editions/cannot-count': {
    status: 422,
    title: 'Categories of the scheme could never have a result',
    explains:
      'Each category needs a pinned version of its method that yields its series; a retention needs untreated pulls in the same version, a stress diameters that make a cross-section. The errors name the category, what is missing and what to do.',
  },
  'editions/nothing-to-open': {
    status: 409,
    title: 'An edition opens with entries',
    explains: 'Enter at least one variant.',
  },
  'editions/interest': {
    status: 409,
    title: 'You have declared an interest in this maker',
    explains: 'Somebody without a tie to the maker decides on exclusions of its variants.',
  },
});
