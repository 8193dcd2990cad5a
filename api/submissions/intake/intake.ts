import type { InputFault } from '../../platform/errors/problem.js';
import type { SubmissionContent } from '../../contract/submission-content.js';

/** One submission as parsed, and how a fault of it is told: for a file, by row and column. */
export interface HandIn {
  readonly content: SubmissionContent;
  readonly rows: readonly [number, number] | null;
  readonly locate: (fault: InputFault) => InputFault;
}

/** What came as JSON: its places are its own. */
export const handInOf = (content: SubmissionContent): HandIn => ({ content, rows: null, locate: (fault) => fault });

/** What came with one request: submissions that could be read, and the faults of those that could not. */
export interface Intake {
  readonly isFile: boolean;
  /** One after the other, as they become whole; to be read once. */
  readonly handIns: AsyncIterable<HandIn>;
  /** Faults of what could not be read, and whether what could be may be used beside them; all of it when the submissions have been read. */
  readonly unread: () => { readonly faults: readonly InputFault[]; readonly furtherFaults: number; readonly isSound: boolean };
}

/** Specimens that are examined and stored at once. */
export const BATCH_SPECIMENS = 2000;

/** Several submissions together, for fewer questions to the record; never more than one beyond so many specimens. */
export async function* inBatches(handIns: AsyncIterable<HandIn>): AsyncGenerator<HandIn[]> {
  let batch: HandIn[] = [];
  let specimens = 0;
  for await (const handIn of handIns) {
    batch.push(handIn);
    specimens += handIn.content.specimens.length;
    if (specimens < BATCH_SPECIMENS) continue;
    yield batch;
    [batch, specimens] = [[], 0];
  }
  if (batch.length > 0) yield batch;
}
