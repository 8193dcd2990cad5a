import { declareProblems } from '../platform/errors/problem.js';

export const statementProblems = declareProblems({
  'statements/ended': {
    status: 409,
    title: 'The remark stands no more',
    explains: 'A remark is superseded or ended once. Read the list again, and write a new one where it is still needed.',
  },
});
