import { declareProblems } from '../platform/errors/problem.js';

export const proposalProblems = declareProblems({
  'proposals/own-proposal': {
    status: 403,
    title: 'You made this proposal yourself',
    explains:
      'A withdrawal and a re-identification take two persons: one proposes, another carries it out. Ask another editor, or call it off (POST /v1/proposals/{id}/cancellation).',
  },
  'proposals/own-spool': {
    status: 403,
    title: 'Nobody re-identifies a spool that they tested',
    explains:
      'You handed in a submission on this spool. Who pulled it does not also say what it is: ask another editor to put the re-identification on record.',
  },
  'proposals/not-yours': {
    status: 403,
    title: 'Another person made this proposal',
    explains:
      'Only who made a proposal calls it off. Decline it with a reason (POST /v1/proposals/{id}/refusal), as an editor, or ask its maker.',
  },
  'proposals/ended': {
    status: 409,
    title: 'The proposal is not open any more',
    explains: 'A proposal is carried out, declined or called off once, and stays so. Make a new one where it is still needed.',
  },
  'proposals/never-possible': {
    status: 422,
    title: 'This could never be carried out',
    explains:
      'A withdrawal is of an accepted submission, a re-identification of a spool to another variant on record. The detail says what stands in the way and what to do instead.',
  },
  'proposals/made-before': {
    status: 409,
    title: 'You have proposed the same already',
    explains:
      'It waits for another person. To say it otherwise, call the first off (POST /v1/proposals/{id}/cancellation), then propose again.',
  },
  'proposals/other-matter': {
    status: 422,
    title: 'The proposal is about something else',
    explains:
      'A proposal is carried out where it belongs, once. The detail says what it is about, or that it is carried out already: name another proposal, or make one.',
  },
});
