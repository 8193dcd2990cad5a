import { declareProblems } from '../platform/errors/problem.js';

export const submissionProblems = declareProblems({
  'submissions/blocked': {
    status: 422,
    title: 'A check blocks the submission',
    explains:
      'An automatic check found something that no reviewer may let pass. Each is listed. Nothing was stored. Correct it and hand it in again.',
  },
  'submissions/wrong-state': {
    status: 409,
    title: 'The submission is not in a state for this',
    explains:
      'A draft is changed, deleted and handed in; a returned submission is handed in again. Whatever else was handed in stays as it is.',
  },
  'submissions/query-open': {
    status: 409,
    title: 'The question on this submission waits for an answer',
    explains: 'Answer it first (GET /v1/queries, POST /v1/queries/{id}/answer), then hand the submission in again.',
  },
  'submissions/edition-closed': {
    status: 409,
    title: 'The edition closed in this moment',
    explains: 'The edition is not open any more, so nothing was stored. Ask an editor.',
  },
  'submissions/rig-watched': {
    status: 409,
    title: 'A control pull of the rig came in this moment',
    explains: 'What is known of the rig has changed since the checks looked, so nothing was stored. Hand it in again.',
  },
});
