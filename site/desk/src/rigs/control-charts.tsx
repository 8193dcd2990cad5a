import { chartsResponse } from '../../../../api/contract/endpoints/control-pulls.js';
import type { z } from 'zod';
import { ask } from '../http/ask.js';
import { isWide } from '../parts/is-wide.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { useMethodNames } from '../parts/use-method-names.js';
import { WithReason } from '../parts/with-reason.js';
import { dayOf } from '../words/day-of.js';
import { signalWords } from '../words/signal-words.js';
import { ChartPlot, MOST_POINTS } from './chart-plot.js';

type Chart = z.infer<typeof chartsResponse>['items'][number];
const MOST_LISTED = 10;
const AT_ONCE = { wide: 6, phone: 3 };

/** Every rig on its control line; a reviewer takes a pull out that was wrong in itself, with the reason. */
export function ControlCharts({ canStrike }: { canStrike: boolean }) {
  const charts = useLoaded(() => ask(chartsResponse, 'GET', 'control-charts'));
  const strike = async (id: string, reason: string) => {
    await ask(chartsResponse, 'POST', `control-pulls/${id}/strike`, { body: { reason } });
    charts.again();
    return '';
  };
  const { loud = [], calm = [] } = Object.groupBy(newestFirst(charts.answer?.items ?? []), (chart) => (signalled(chart) ? 'loud' : 'calm'));
  return (
    <section>
      <h2>Control charts</h2>
      <Loading of={charts} />
      {charts.answer?.items.length === 0 && <p class="soft">Nobody has pulled on a control line yet; a bench day begins with it.</p>}
      {charts.answer && charts.answer.items.length > 0 && (
        <p class="soft">
          Each point is the mean of a control pull in N, oldest first; red signalled, hollow does not count; dashed are the limits that
          judged it. <a href="/read/">How a rig is judged</a>
        </p>
      )}
      <Charts charts={loud} strike={canStrike ? strike : null} />
      {calm.length > 0 && loud.length > 0 && (
        <details>
          <summary>{calm.length} charts without a signal in their last pulls</summary>
          <Charts charts={calm} strike={canStrike ? strike : null} />
        </details>
      )}
      {loud.length === 0 && <Charts charts={calm} strike={canStrike ? strike : null} />}
    </section>
  );
}

/** What is pulled today comes before lots that are used up. */
const newestFirst = (charts: readonly Chart[]): Chart[] =>
  charts.toSorted((one, other) => (other.points.at(-1)?.benchDay ?? '').localeCompare(one.points.at(-1)?.benchDay ?? ''));

type Strike = ((id: string, reason: string) => Promise<string>) | null;

/** Whether one of the pulls that the chart shows signalled, and stands. */
const signalled = ({ points }: Chart): boolean =>
  points.slice(-MOST_POINTS).some(({ signals, strike }) => signals.length > 0 && strike === null);

function Charts({ charts, strike }: { charts: readonly Chart[]; strike: Strike }) {
  const nameOf = useMethodNames();
  const atOnce = isWide() ? AT_ONCE.wide : AT_ONCE.phone;
  const drawn = (some: readonly Chart[]) => (
    <div class="multiples">
      {some.map((chart) => (
        <OneChart key={chart.instrument + chart.method + chart.controlLine.code} {...{ chart, strike }} method={nameOf(chart.method)} />
      ))}
    </div>
  );
  return (
    <>
      {drawn(charts.slice(0, atOnce))}
      {charts.length > atOnce && (
        <details>
          <summary>{charts.length - atOnce} more, pulled on before these</summary>
          {drawn(charts.slice(atOnce))}
        </details>
      )}
    </>
  );
}

function OneChart({ chart, strike, method }: { chart: Chart; strike: Strike; method: string }) {
  const { instrument, controlLine, points } = chart;
  const newest = [...points].reverse().slice(0, MOST_LISTED);
  return (
    <section>
      <h3>
        {instrument} {method} <span class="soft small">{controlLine.name}</span>
      </h3>
      <ChartPlot points={points} isSmall />
      <details>
        <summary>
          The last pulls<span class="only-heard"> on {instrument}</span>
        </summary>
        <ul class="rows">
          {newest.map(({ id, benchDay, tester, meanN, signals, strike: struck, note }) => (
            <li key={id}>
              <p>
                {dayOf(benchDay)}: {meanN} N <span class="soft">by {tester}</span>
                {note !== null && <span class="soft"> {note}</span>}
                {signals.length > 0 && <span class="signal"> signals: {signalWords(signals)}</span>}
                {struck && <span class="soft"> does not count: {struck.reason}</span>}
              </p>
              {strike && !struck && (
                <WithReason act={`Strike the pull of ${dayOf(benchDay)}`} keptAs={`strike ${id}`} onSend={(reason) => strike(id, reason)} />
              )}
            </li>
          ))}
        </ul>
      </details>
    </section>
  );
}
