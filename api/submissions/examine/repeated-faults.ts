import type { InputFault } from '../../platform/errors/problem.js';

const REMEDY = 'If it was measured again and read the same, say so in its note.';

/** @param reference of the submission that stands with the same content */
export const handedInBefore = (reference: string): InputFault => ({
  pointer: '',
  code: 'handed_in_before',
  detail: `The same was handed in before as ${reference}: leave it out, or take that one back first. ${REMEDY}`,
});

/** @param rows of the same content above it in the file */
export const twiceInFile = ([first, last]: readonly [number, number]): InputFault => ({
  pointer: '',
  code: 'twice_in_file',
  detail: `The same stands in rows ${first} to ${last} of the file: leave one out. ${REMEDY}`,
});
