import type { RowFault } from './row-fault.js';

interface Kind {
  readonly mark: readonly number[];
  readonly code: 'file_is_workbook' | 'file_not_utf8';
  readonly found: string;
  readonly remedy: string;
}

// A workbook keeps numbers as binary fractions: the zeros of a display, as in 36.10, are lost in it, so that it is not read.
const AS_CSV = 'Open it in the spreadsheet, choose "Save as", take the type "CSV UTF-8", and send that file';
const KINDS: readonly Kind[] = [
  { mark: [0x50, 0x4b, 0x03, 0x04], code: 'file_is_workbook', found: 'a workbook (.xlsx or .ods) or another zip file', remedy: AS_CSV },
  { mark: [0xd0, 0xcf, 0x11, 0xe0], code: 'file_is_workbook', found: 'an old workbook (.xls)', remedy: AS_CSV },
  { mark: [0xff, 0xfe], code: 'file_not_utf8', found: 'text in UTF-16', remedy: 'Save it again with the encoding UTF-8' },
  { mark: [0xfe, 0xff], code: 'file_not_utf8', found: 'text in UTF-16', remedy: 'Save it again with the encoding UTF-8' },
];

export const LONGEST_MARK = Math.max(...KINDS.map(({ mark }) => mark.length));

/** @returns what a file is that is often sent in place of CSV, told by its first bytes; null for any other */
export function foreignFile(head: Uint8Array): RowFault | null {
  const kind = KINDS.find(({ mark }) => mark.every((byte, index) => head[index] === byte));
  if (!kind) return null;
  const { code, found, remedy } = kind;
  return { code, row: 0, column: '', found, expected: 'CSV in UTF-8', message: `The file is ${found}, expected CSV in UTF-8. ${remedy}.` };
}
