import { declareProblems } from '../platform/errors/problem.js';

export const accountProblems = declareProblems({
  'accounts/wrong-credentials': {
    status: 401,
    title: 'Address or password is wrong',
    explains:
      'The answer is the same whether the account is unknown or the password is wrong. Try again, or ask an admin for an invitation.',
  },
  'accounts/wrong-password': {
    status: 422,
    title: 'The password until now is wrong',
    explains: 'Type it again. If it is lost, ask an admin for an address to set a new one.',
  },
  'accounts/too-many-failures': {
    status: 429,
    title: 'Too many failed tries',
    explains:
      'After five failures with one password, or twenty from one address, the wait doubles with each further one. Wait for the seconds in Retry-After; a place from which you are signed in is not slowed down by tries from elsewhere.',
  },
  'accounts/invitation-not-valid': {
    status: 410,
    title: 'The invitation is used, expired or unknown',
    explains: 'Ask an admin for a new invitation.',
  },
  'accounts/address-taken': {
    status: 409,
    title: 'This address has an account',
    explains:
      'Nobody has two accounts. Sign in, or ask an admin for an address to set a new password; an account that is disabled an admin can enable again. The invitation stays valid.',
  },
  'accounts/name-taken': {
    status: 409,
    title: 'Somebody here has this name, or one that looks like it',
    explains:
      'Published evidence names people, so that names must be told apart by eye. Add a first name, an initial or a place. The invitation stays valid.',
  },
  'accounts/reset-not-valid': {
    status: 410,
    title: 'The address to set a password is used, expired or unknown',
    explains: 'It serves once, within a day, and only the last one that was made. Ask an admin for a new one.',
  },
  'accounts/no-mail': {
    status: 409,
    title: 'This house sends no mail',
    explains: 'Ask an admin for an address to set a new password; an admin gets one at the machine of the house.',
  },
  'accounts/disabled': {
    status: 409,
    title: 'The account is disabled',
    explains: 'Enable it first, if its holder is to come back.',
  },
  'accounts/scope-beyond-roles': {
    status: 422,
    title: 'A token cannot do more than its account',
    explains: 'Ask for scopes among your own roles only.',
  },
  'accounts/last-admin': { status: 409, title: 'The last admin stays', explains: 'Give the role to somebody else first.' },
});
