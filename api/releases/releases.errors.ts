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
  'releases/expected-otherwise': {
    status: 409,
    title: 'What the correction expects is not what is published',
    explains: 'Somebody was quicker, or the correction rests on an older revision. Look at the current release and correct from there.',
  },
  'releases/not-in-future': { status: 422, title: 'The time of publication is past', explains: 'Give a time to come, or leave it out.' },
  'releases/not-waiting': {
    status: 409,
    title: 'What is published is not called off',
    explains: 'It stays. Correct it by a new revision with an erratum.',
  },
  'releases/in-progress': {
    status: 409,
    title: 'A release of this edition is being built or waits for its time',
    explains: 'Wait until it is published, or call it off and order it anew.',
  },
  'releases/file-lost': {
    status: 500,
    title: 'A published file is lost',
    explains:
      'It was published and its digest is known, but the file store has it no more. Ask the house, which makes it again (npm run rebuild-files) or restores it from a backup.',
  },
  'releases/not-loaded': {
    status: 503,
    title: 'What is published is not known yet',
    explains: 'The server has just started and its database does not answer. Ask again in a moment.',
  },
  'releases/entry-in-no-division': {
    status: 409,
    title: 'An entry is in none of the divisions, or could be in several',
    explains:
      'Its line was corrected since the edition closed, or a rule does not fit. The errors list such entries; put each into a division (POST /v1/editions/{edition}/overrulings), or correct its line.',
  },
  'releases/house-not-stated': {
    status: 409,
    title: 'The house has not said who it is',
    explains:
      'Readers get contact, people, funding, interests and the right of reply with the first release of an edition. The errors list what is missing; say it at POST /v1/house-statement, then order the release again.',
  },
  'releases/no-standings': {
    status: 409,
    title: 'There is nothing to publish',
    explains:
      'No entry has a result in every category that has places. Look at the board of the edition (GET /v1/editions/{edition}/board): it says what each entry lacks.',
  },
});
