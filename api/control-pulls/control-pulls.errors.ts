import { declareProblems } from '../platform/errors/problem.js';

export const controlPullProblems = declareProblems({
  'control-pulls/out-of-order': {
    status: 409,
    title: 'A control pull of a later bench day is on record',
    explains:
      'Each control pull is judged by those before it, so they are handed in by the order of bench days. A day without one stays without evidence, which a reviewer weighs. Correct the day, or pull again.',
  },
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
    title: 'The control pull is struck already',
    explains: 'It is struck once, and its reason stands. Nothing more is to be done; pull again where the rig needs evidence.',
  },
});
