import type { InputFault } from '../../platform/errors/problem.js';
import type { HandIn, Intake } from './intake.js';
import { FaultTally, refusal } from './intake-tally.js';

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
