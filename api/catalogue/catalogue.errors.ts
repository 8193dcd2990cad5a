import { declareProblems } from '../platform/errors/problem.js';

export const catalogueProblems = declareProblems({
  'catalogue/own-spool': {
    status: 403,
    title: 'Nobody re-identifies a spool that they tested',
    explains:
      'You handed in a submission on this spool. Who pulled it does not also say what it is: ask another editor to put the re-identification on record.',
  },
});
