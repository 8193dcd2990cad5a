import type { InputFault } from '../../platform/errors/problem.js';

/** Where the same content was met before: the submission that stands with it, the rows of the file that hold it. */
export interface MetBefore {
  readonly onRecord: { readonly submissionId: string; readonly reference: string } | undefined;
  readonly rows: readonly [number, number] | null | undefined;
}

/** Why content is not taken a second time; null where it stands nowhere else. A revision may say what its own submission said. */
export function handedInTwice({ onRecord, rows }: MetBefore, ownId: string | undefined): InputFault | null {
  if (onRecord && onRecord.submissionId !== ownId) return handedInBefore(onRecord.reference);
  return rows ? twiceInFile(rows) : null;
}

const REMEDY = 'If it was measured again and read the same, say so in its note.';

/** @param reference of the submission that stands with the same content */
const handedInBefore = (reference: string): InputFault => ({
  pointer: '',
  code: 'handed_in_before',
  detail: `The same was handed in before as ${reference}: leave it out, or take that one back first. ${REMEDY}`,
});

/** @param rows of the same content above it in the file */
const twiceInFile = ([first, last]: readonly [number, number]): InputFault => ({
  pointer: '',
  code: 'twice_in_file',
  detail: `The same stands in rows ${first} to ${last} of the file: leave one out. ${REMEDY}`,
});
