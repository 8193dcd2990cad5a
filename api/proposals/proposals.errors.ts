import { declareProblems } from '../platform/errors/problem.js';

export const proposalProblems = declareProblems({
  'proposals/own-proposal': {
    status: 403,
    title: 'You made this proposal yourself',
    explains: 'A withdrawal and a re-identification take two persons: one proposes, another carries it out.',
  },
  'proposals/other-matter': {
    status: 422,
    title: 'The proposal is about something else',
    explains: 'A proposal is carried out where it belongs, once. The detail says what it is about, or that it is carried out already.',
  },
});
