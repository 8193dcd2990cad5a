import { FileRow } from './file-row.js';
import { keyOf, MOST_SUBMISSIONS } from './gather-submissions.js';
import { readHeader } from './read-header.js';
import type { Header } from './read-header.js';
import { readRows } from './read-rows.js';
import { readText } from './read-text.js';
import { UnreadableFile } from './row-fault.js';

export interface Survey {
  /** What tells a submission from others → its last row. */
  readonly lastRows: ReadonlyMap<string, number>;
  /** Whether a submission of the file may be used: not where the header has faults, nor where a row could belong to any of them. */
  readonly isSound: boolean;
}

/** Reads through a hand-in file for the ends of its submissions; its faults are told by the reading after. */
export async function surveyRows(bytes: AsyncIterable<Uint8Array>): Promise<Survey> {
  const lastRows = new Map<string, number>();
  let isSound = true;
  let known: Header | undefined;
  try {
    for await (const rows of readRows(readText(bytes))) {
      for (const { separator, row, cells } of rows) {
        if (!known) {
          const { header, faults } = readHeader(row, cells);
          known = header;
          isSound = faults.length === 0;
        } else if (cells.length === known.width) lastRows.set(keyOf(new FileRow(row, cells, known, separator === ';')), row);
        else isSound = false;
        if (lastRows.size > MOST_SUBMISSIONS) return { lastRows, isSound: false };
      }
    }
  } catch (error) {
    if (!(error instanceof UnreadableFile)) throw error;
    isSound = false;
  }
  return { lastRows, isSound };
}
