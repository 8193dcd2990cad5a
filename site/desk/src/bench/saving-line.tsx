import { timeOf } from '../words/day-of.js';
import { waitingRows } from './device-copy.js';
import type { Keeping } from './sheet-keeper.js';

/** Where the rows are: on this device, on the server. */
export function SavingLine({ keeping }: { keeping: Keeping }) {
  const { copy, isAway } = keeping;
  const waiting = waitingRows(copy);
  const last = copy.sentAt === null ? 'nothing sent yet' : `last sent ${timeOf(new Date(copy.sentAt))}`;
  const where = copy.isDraft ? `${waiting === 0 ? 'Nothing' : waiting} waiting, ${last}.` : 'Kept on this device until you hand it in.';
  return (
    <p class="where" role="status" data-waiting={waiting}>
      {where}
      {isAway && <span class="signal"> The network is away; go on, it is sent when it is back.</span>}
      {copy.handInKey !== null && isAway && ' Handed in as soon as it is back, once.'}
    </p>
  );
}
