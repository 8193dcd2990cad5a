import { declareProblems } from '../platform/errors/problem.js';

export const webhookProblems = declareProblems({
  'webhooks/address-refused': {
    status: 422,
    title: 'The address is none that is told of changes',
    explains:
      'Events go to addresses of the public internet by https. Private, loopback and other addresses of special use are refused, so that nobody reaches into the network of this house; its operator can allow them with WEBHOOKS_TO_NEAR_ADDRESSES=true. The detail says what was found; name another address.',
  },
});
