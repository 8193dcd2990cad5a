import type { z } from 'zod';
import { backupsResponse, openOrdersResponse } from '../../../../api/contract/order-state.js';
import type { OrderState } from '../../../../api/contract/order-state.js';
import { ask } from '../http/ask.js';
import { Folded } from '../parts/folded.js';
import { Loading } from '../parts/loading.js';
import { useAct } from '../parts/use-act.js';
import { useLoaded } from '../parts/use-loaded.js';
import { dayOf, timeOf } from '../words/day-of.js';

const momentOf = (moment: string): string => `${dayOf(moment)}, ${timeOf(new Date(moment))}`;
const STATE_WORDS: Readonly<Record<OrderState['state'], string>> = {
  waiting: 'waits',
  running: 'at work',
  retrying: 'failed, and is tried again',
  done: 'done',
  calledOff: 'called off',
  failed: 'failed, and is not tried again',
};
const ORDER_WORDS: Readonly<Record<string, string>> = {
  backup: 'Backup',
  'release-publication': 'Publication of a release',
  'site-build': 'Building of the site',
  'clean-up': 'Clearing away of what has expired',
};

/** What the worker does: backups, and orders that wait or failed. */
export function MachineRoom() {
  const backups = useLoaded(() => ask(backupsResponse, 'GET', 'operations/backups'));
  const orders = useLoaded(() => ask(openOrdersResponse, 'GET', 'operations/orders'));
  const { said, act } = useAct(backups.again);
  return (
    <>
      <Folded heading="Backups" told={backups.answer ? lastOf(backups.answer) : ''}>
        <Loading of={backups} />
        {backups.answer && (
          <Backups
            {...backups.answer}
            onOrder={() =>
              act(
                () => ask(backupsResponse, 'POST', 'operations/backups'),
                'Ordered. It is made and read through by the worker; you can leave this page.',
              )
            }
            onLook={backups.again}
          />
        )}
        <p role="status">{said}</p>
      </Folded>
      <Folded heading="Orders to the worker" told={orders.answer ? openOf(orders.answer.items) : ''}>
        <Loading of={orders} />
        {orders.answer?.items.length === 0 && <p class="soft">Nothing waits, and nothing has failed.</p>}
        <ul class="rows">
          {orders.answer?.items.map(({ queue, order, orderedAt, state, attempts, words, nextAttemptAt }) => (
            <li key={`${queue} ${orderedAt}`}>
              <p>
                {ORDER_WORDS[queue] ?? queue} <span class="soft">{toldOf(order)}</span>
                {words !== null && (
                  <>
                    <br />
                    <span class="signal">{words}</span>
                  </>
                )}
              </p>
              <span>
                <span class={state === 'failed' || state === 'retrying' ? 'signal' : ''}>{STATE_WORDS[state]}</span>
                <br />
                <span class="soft">
                  ordered {momentOf(orderedAt)}
                  {attempts > 1 && `, attempt ${attempts}`}
                  {nextAttemptAt !== null && `, next ${momentOf(nextAttemptAt)}`}
                </span>
              </span>
            </li>
          ))}
        </ul>
      </Folded>
    </>
  );
}

const lastOf = ({ items }: z.infer<typeof backupsResponse>): string => {
  const [last] = items;
  return last ? `${STATE_WORDS[last.state]}, ${momentOf(last.orderedAt)}` : 'none';
};

const openOf = (items: readonly OrderState[]): string => {
  const failed = items.filter(({ state }) => state === 'failed' || state === 'retrying').length;
  return `${items.length} open${failed > 0 ? `, ${failed} failed` : ''}`;
};

type Listed = z.infer<typeof backupsResponse> & { readonly onOrder: () => void; readonly onLook: () => void };

function Backups({ times, nextAt, items, onOrder, onLook }: Listed) {
  if (times === null)
    return (
      <p class="signal">
        No backups are made. Whoever runs the server names a folder for them in <code>BACKUP_FOLDER</code>, on another disk than the data.
      </p>
    );
  const last = items.find(({ state }) => state === 'done');
  return (
    <>
      <p>
        {last?.endedAt ? `The last was made ${momentOf(last.endedAt)}.` : 'None was made in the last week.'} The next is made{' '}
        {nextAt === null ? 'by hand' : momentOf(nextAt)}.
      </p>
      <ul class="rows">
        {items.slice(0, 7).map(({ orderedAt, state, words }) => (
          <li key={orderedAt}>
            <p>
              {momentOf(orderedAt)}
              {words !== null && (
                <>
                  <br />
                  <span class={state === 'done' ? 'soft' : 'signal'}>{words}</span>
                </>
              )}
            </p>
            <span class={state === 'failed' || state === 'retrying' ? 'signal' : ''}>{STATE_WORDS[state]}</span>
          </li>
        ))}
      </ul>
      <p class="acts">
        <button type="button" onClick={onOrder}>
          Make a backup now
        </button>
        <button type="button" onClick={onLook}>
          Look again
        </button>
      </p>
    </>
  );
}

const toldOf = (order: unknown): string =>
  Object.entries((order ?? {}) as Record<string, unknown>)
    .map(([name, value]) => `${name} ${String(value)}`)
    .join(', ');
