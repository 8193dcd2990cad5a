import { declareProblems } from '../platform/errors/problem.js';

export const accountProblems = declareProblems({
  'accounts/wrong-credentials': {
    status: 401,
    title: 'Address or password is wrong',
    explains:
      'The answer is the same whether the account is unknown or the password is wrong. Try again, or ask an admin for an invitation.',
  },
  'accounts/too-many-failures': {
    status: 429,
    title: 'Too many failed sign-ins',
    explains: 'After five failures the wait doubles with each further one. Wait for the seconds in Retry-After.',
  },
  'accounts/invitation-not-valid': {
    status: 410,
    title: 'The invitation is used, expired or unknown',
    explains: 'Ask an admin for a new invitation.',
  },
  'accounts/scope-beyond-roles': {
    status: 422,
    title: 'A token cannot do more than its account',
    explains: 'Ask for scopes among your own roles only.',
  },
  'accounts/last-admin': { status: 409, title: 'The last admin stays', explains: 'Give the role to somebody else first.' },
  'accounts/unknown-maker': { status: 422, title: 'No maker has this slug', explains: 'Use the slug of a maker in the catalogue.' },
});
