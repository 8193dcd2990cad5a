import { useState } from 'preact/hooks';
import type { z } from 'zod';
import { rigsResponse } from '../../../../api/contract/endpoints/control-pulls.js';
import { workingEditionsResponse } from '../../../../api/contract/endpoints/editions.js';
import { instrumentsResponse } from '../../../../api/contract/endpoints/instruments.js';
import { methodsResponse } from '../../../../api/contract/endpoints/methods.js';
import { readContext, today } from '../bench/bench-context.js';
import type { BenchContext } from '../bench/bench-context.js';
import { ContextForm } from '../bench/context-form.js';
import { ControlPull } from '../bench/control-pull.js';
import { WorkList } from '../bench/work-list.js';
import type { ScreenProps } from '../frame/open-screen.js';
import { allPages } from '../http/all-pages.js';
import { ask } from '../http/ask.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { dayOf } from '../words/day-of.js';
import { RIG_STATES } from '../words/rig-words.js';

/** A day at the bench, in the order in which it goes: what holds for the day, the rigs, the control pull, the spools. */
export function BenchDay({ account }: ScreenProps) {
  const [context, setContext] = useState<BenchContext | null>(() => readContext(account.id));
  const house = useLoaded(async () => {
    const [editions, instruments, methods] = await Promise.all([
      ask(workingEditionsResponse, 'GET', 'bench/editions'),
      allPages(instrumentsResponse, 'instruments'),
      allPages(methodsResponse, 'catalogue/methods'),
    ]);
    return { editions: editions.items.filter(({ state }) => state === 'open'), instruments, methods };
  });
  const { answer } = house;
  const keepDay = (kept: BenchContext) => {
    setContext(kept);
    // What comes next stands above the button that was pressed.
    document.getElementById('content')?.focus();
    window.scrollTo(0, 0);
  };
  return (
    <>
      <h1>Bench day</h1>
      <Loading of={house} />
      {answer?.editions.length === 0 && <p>No edition is open. An editor opens one; then its spools can be tested.</p>}
      {answer && answer.editions.length > 0 && (
        <>
          <Day {...answer} accountId={account.id} context={context} onKept={keepDay} />
          {context && (
            <>
              <Rigs context={context} {...answer} />
              <h2>Spools</h2>
              <WorkList context={context} methods={answer.methods} accountId={account.id} />
              <p>
                <a href="/desk/file/">Hand in a file instead</a>
              </p>
            </>
          )}
        </>
      )}
    </>
  );
}

type DayProps = Parameters<typeof ContextForm>[0];

function Day(props: DayProps) {
  const { context } = props;
  if (!context) return <ContextForm {...props} />;
  const isToday = context.benchDay === today();
  return (
    <details>
      <summary>
        {isToday ? 'Today' : <span class="signal">Of {dayOf(context.benchDay)}: still right?</span>}: {context.instruments.join(' ')},{' '}
        {context.temperature} {context.temperatureUnit}, {context.humidityPercent} %
      </summary>
      <ContextForm {...props} />
    </details>
  );
}

function Rigs(props: { context: BenchContext } & Pick<DayProps, 'instruments'> & Pick<Parameters<typeof ControlPull>[0], 'methods'>) {
  const { context } = props;
  const rigs = useLoaded(() => ask(rigsResponse, 'GET', `rigs?day=${context.benchDay}`), [context.benchDay]);
  const nameOf = (slug: string) => props.methods.find((method) => method.slug === slug)?.name ?? slug;
  const mine = rigs.answer?.items.filter(({ instrument }) => context.instruments.includes(instrument)) ?? [];
  return (
    <>
      <h2>Rigs of the day</h2>
      <Loading of={rigs} />
      <ul class="rows">
        {alike(mine).map(({ instrument, state, words, of }) => (
          <li key={instrument + state + words}>
            <p>
              <span class="rig">
                <strong>{instrument}</strong> <span class={state === 'outOfControl' ? 'signal' : ''}>{RIG_STATES[state]}</span>
              </span>
              <br />
              {words}
            </p>
            <span class="soft">{pullsOf(of, nameOf)}</span>
          </li>
        ))}
      </ul>
      {rigs.answer && mine.length === 0 && <p class="soft">No control pull is on record for these instruments.</p>}
      <h2>Control pull</h2>
      <ControlPull {...props} onPulled={rigs.again} />
    </>
  );
}

type Rig = z.infer<typeof rigsResponse>['items'][number];

/** A rig is told of once for all methods of which the same is to be said; what stops somebody comes first. */
function alike(rigs: readonly Rig[]): (Pick<Rig, 'instrument' | 'state' | 'words'> & { readonly of: readonly Rig[] })[] {
  const groups = Map.groupBy(rigs, ({ instrument, state, words }) => [instrument, state, words].join(' '));
  const isOut = ({ state }: Rig) => Number(state === 'outOfControl');
  return [...groups.values()].flatMap((of) => (of[0] ? [{ ...of[0], of }] : [])).sort((one, other) => isOut(other) - isOut(one));
}

/** When it was pulled last by each method, methods of one day together. */
function pullsOf(rigs: readonly Rig[], nameOf: (slug: string) => string): string {
  const pulled = Map.groupBy(rigs, ({ lastPullOn, pullsToLimits }) => {
    const last = lastPullOn === null ? 'never pulled' : `last pull ${dayOf(lastPullOn)}`;
    return `${last}${pullsToLimits > 0 ? `, ${pullsToLimits} more until there are limits` : ''}`;
  });
  return [...pulled].map(([words, of]) => `${of.map(({ method }) => nameOf(method)).join(', ')}: ${words}`).join('; ');
}
