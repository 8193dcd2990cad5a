import { declareProblems } from '../platform/errors/problem.js';

export const webhookProblems = declareProblems({
  'webhooks/address-refused': {
    status: 422,
    title: 'The address is none that is told of changes',
    explains:
      'Events go to addresses of the public internet by https. Private, loopback and other addresses of special use are refused, so that nobody reaches into the network of this house; its operator can allow them with WEBHOOKS_TO_NEAR_ADDRESSES=true. The detail says what was found; name another address.',
  },
  'webhooks/not-told-yet': {
    status: 422,
    title: 'The webhook was not told so far yet',
    explains:
      'A replay goes back: it tells again of every change after the number that is sent. A number beyond the last change that the webhook was told would leave out what lies between, and nothing is to be lost. The detail says how far it was told (toldUpTo); send that number or a smaller one, 0 for everything.',
  },
});
