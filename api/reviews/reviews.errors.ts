import { declareProblems } from '../platform/errors/problem.js';

export const reviewProblems = declareProblems({
  'reviews/own-submission': {
    status: 403,
    title: 'Nobody reviews their own submission',
    explains:
      'A second person decides: another reviewer accepts, returns or refuses it, and another editor withdraws it. Leave it in the queue, or ask one of them.',
  },
  'reviews/declared-interest': {
    status: 403,
    title: 'You declared an interest in the maker of this spool',
    explains: 'Somebody without a tie to the maker decides on this submission. Leave it in the queue, or ask another reviewer.',
  },
  'reviews/wrong-state': {
    status: 409,
    title: 'The submission is not in a state for this decision',
    explains:
      'Only a submitted one is accepted, returned or refused; only a returned one is closed; only an accepted one is withdrawn. Read it again.',
  },
  'reviews/claimed': {
    status: 409,
    title: 'Another reviewer has claimed this review',
    explains: 'Two people do not do the same work. The detail says who has it and until when; take another one from the queue.',
  },
  'reviews/judged': {
    status: 409,
    title: 'You have judged this revision already',
    explains:
      'A first judgement is given once and stands, so that what is shown afterwards cannot change it. Go on: accept it, return it with a reason, or refuse it.',
  },
  'reviews/judge-first': {
    status: 403,
    title: 'Earlier results are shown after your first judgement',
    explains:
      'Say first what you think of the readings by themselves (POST …/judgements). Then earlier results of the same variant are shown.',
  },
  'reviews/finding-answered': {
    status: 409,
    title: 'The finding is answered already',
    explains: 'An answer is given once and stands. Withdraw the submission if it does not stand any more.',
  },
  'reviews/query-answered': {
    status: 409,
    title: 'The query is answered already',
    explains: 'An answer is given once and stands. Hand the submission in again, with what you corrected.',
  },
});
