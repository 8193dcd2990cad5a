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
      'A draft is changed, deleted and handed in; a returned submission is handed in again. Whatever else was handed in stays as it is: say what is wrong with it to a reviewer, who can propose that it is withdrawn.',
  },
  'submissions/query-open': {
    status: 409,
    title: 'The question on this submission waits for an answer',
    explains: 'Answer it first (GET /v1/queries, POST /v1/queries/{id}/answer), then hand the submission in again.',
  },
  'submissions/handed-in-before': {
    status: 409,
    title: 'The same was handed in before',
    explains:
      'Every reading and everything beside it is as in a submission of yours that stands; nothing was stored. If that was a mistake, take it back and hand in again. If it was measured again and read the same, say so in the note.',
  },
  'submissions/in-review': {
    status: 409,
    title: 'A reviewer has begun to look at the submission',
    explains: 'It is decided by its review now. Tell the reviewer what is wrong with it; it may come back to you with a question.',
  },
  'submissions/edition-closed': {
    status: 409,
    title: 'The edition closed in this moment',
    explains: 'The edition is not open any more, so nothing was stored. Ask an editor.',
  },
  'submissions/too-many-drafts': {
    status: 409,
    title: 'You have begun as many drafts as one person may',
    explains: 'Hand in what is ready, and take away what nobody needs (DELETE /v1/drafts/{reference}).',
  },
  'submissions/rig-watched': {
    status: 409,
    title: 'A control pull of the rig came in this moment',
    explains: 'What is known of the rig has changed since the checks looked, so nothing was stored. Hand it in again.',
  },
});
