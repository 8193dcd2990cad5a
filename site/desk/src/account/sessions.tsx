import { z } from 'zod';
import { sessionsResponse } from '../../../../api/contract/endpoints/accounts.js';
import { ask } from '../http/ask.js';
import { forgetSession } from '../http/session.js';
import { Loading } from '../parts/loading.js';
import { useAct } from '../parts/use-act.js';
import { useLoaded } from '../parts/use-loaded.js';
import { dayOf, timeOf } from '../words/day-of.js';

/** Where one is signed in, and the way out of a laptop that stayed behind. */
export function Sessions() {
  const sessions = useLoaded(() => ask(sessionsResponse, 'GET', 'sessions'));
  const { said, act } = useAct(sessions.again);
  const endAll = () => {
    act(async () => {
      await ask(z.null(), 'DELETE', 'sessions');
      forgetSession();
      window.location.assign('/desk/');
    }, '');
  };
  return (
    <section>
      <h2>Where you are signed in</h2>
      <Loading of={sessions} />
      <p role="status">{said}</p>
      <ul class="rows">
        {sessions.answer?.items.map(({ id, network, createdAt, isCurrent }) => (
          <li key={id}>
            <p>
              {isCurrent ? 'Here' : (network ?? 'unknown network')}{' '}
              <span class="soft">
                since {dayOf(createdAt)}, {timeOf(new Date(createdAt))}
              </span>
            </p>
            {!isCurrent && (
              <button type="button" onClick={() => act(() => ask(z.null(), 'DELETE', `sessions/${id}`), 'That session is over.')}>
                End it<span class="only-heard">, of {dayOf(createdAt)}</span>
              </button>
            )}
          </li>
        ))}
      </ul>
      <button type="button" onClick={endAll}>
        End all sessions, this one too
      </button>
    </section>
  );
}
