import { roundRobinsResponse } from '../../../../api/contract/endpoints/round-robins.js';
import { ask } from '../http/ask.js';
import { Loading } from '../parts/loading.js';
import { useMethodNames } from '../parts/use-method-names.js';
import { useLoaded } from '../parts/use-loaded.js';

export const robinAt = (slug: string): string => `/desk/rigs/?robin=${slug}`;

/** Round robins of the house, newest first. */
export function RoundRobins() {
  const nameOf = useMethodNames();
  const robins = useLoaded(() => ask(roundRobinsResponse, 'GET', 'round-robins'));
  return (
    <section>
      <h2>Round robins</h2>
      <p>Several testers pull the same spools; what comes out tells how far a result of another hand or rig may be off.</p>
      <Loading of={robins} />
      {robins.answer?.items.length === 0 && <p class="soft">There was none yet.</p>}
      <ul class="rows">
        {robins.answer?.items.map(({ slug, name, method, state }) => (
          <li key={slug}>
            <p>
              <a href={robinAt(slug)}>{name}</a> <span class="soft">{nameOf(method)}</span>
            </p>
            <span>{state}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
