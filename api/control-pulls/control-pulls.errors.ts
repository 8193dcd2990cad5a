import { declareProblems } from '../platform/errors/problem.js';

export const controlPullProblems = declareProblems({
  'control-pulls/handed-in-before': {
    status: 409,
    title: 'The same control pull is on record',
    explains:
      'Rig, method, control line, bench day, readings, air and note are those of a pull of yours that is on record; nothing was stored. If it was pulled again and read the same, say so in the note.',
  },
  'control-pulls/own-pull': {
    status: 403,
    title: 'Nobody strikes their own control pull',
    explains: 'Ask another reviewer to look at it and to take it out of the chart, with a reason.',
  },
  'control-pulls/struck': {
    status: 409,
    title: 'The control pull counts for nothing already',
    explains: 'It was struck, or came in late, and its reason stands. Nothing more is to be done; pull again where the rig needs evidence.',
  },
});
