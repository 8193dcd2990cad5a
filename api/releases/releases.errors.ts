import { declareProblems } from '../platform/errors/problem.js';

export const releaseProblems = declareProblems({
  'releases/edition-not-closed': {
    status: 409,
    title: 'Only a closed edition is published',
    explains: 'Close the edition first; then nothing it rests on moves any more.',
  },
  'releases/erratum-needed': {
    status: 422,
    title: 'A later revision needs an erratum',
    explains: 'Give the reason code and the words that readers see.',
  },
  'releases/erratum-too-early': { status: 422, title: 'A first revision corrects nothing', explains: 'Leave the erratum out.' },
  'releases/in-progress': { status: 409, title: 'A release of this edition is being built', explains: 'Wait until it is published.' },
  'releases/no-standings': {
    status: 409,
    title: 'There is nothing to publish',
    explains: 'No entry has a result in every category of the scheme.',
  },
});
