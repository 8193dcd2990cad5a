import type { InputFault } from '../platform/errors/problem.js';
import type { HandIn } from './hand-in.js';
import { FaultTally, refusal } from './intake-tally.js';

/** What came with one request: submissions that could be read, and the faults of those that could not. */
export interface Intake {
  readonly isFile: boolean;
  /** One after the other, as they become whole; to be read once. */
  readonly handIns: AsyncIterable<HandIn>;
  /** Faults of what could not be read, and whether what could be may be used beside them; all of it when the submissions have been read. */
  readonly unread: () => { readonly faults: readonly InputFault[]; readonly furtherFaults: number; readonly isSound: boolean };
}

/** Specimens that are examined and stored at once. */
const BATCH_SPECIMENS = 2000;

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

/**
 * The one submission of an intake, for what is about one.
 * @throws Problem 422 with every fault of the file, or where it holds another number of submissions
 */
export async function onlyOne({ handIns, unread }: Intake): Promise<HandIn> {
  const found: HandIn[] = [];
  for await (const handIn of handIns) found.push(handIn);
  const { faults, furtherFaults } = unread();
  const tally = FaultTally.of(faults);
  tally.add([], furtherFaults);
  if (tally.count > 0) throw refusal(tally);
  const [first, second] = found;
  if (!first || second) throw refusal(FaultTally.of([(second ?? handInOfNone).locate(notOne(found.length))]));
  return first;
}

const handInOfNone: Pick<HandIn, 'locate'> = { locate: (fault) => fault };

const notOne = (count: number): InputFault => ({
  pointer: '',
  code: 'not_one_submission',
  detail: `Found ${count} submissions, expected the one that is handed in again. Send its rows alone.`,
});
