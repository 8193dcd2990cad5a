import type { z } from 'zod';
import { chartsResponse } from '../../../../api/contract/endpoints/control-pulls.js';
import type { SubmissionResponse } from '../../../../api/contract/endpoints/submissions.js';
import { ask } from '../http/ask.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { useMethodNames } from '../parts/use-method-names.js';
import { ChartPlot } from '../rigs/chart-plot.js';

/** The control pulls of the rig that a submission was pulled on, its day marked. */
export function RigOfTheDay({ submission: { instruments, method, benchDay } }: { submission: SubmissionResponse }) {
  const nameOf = useMethodNames();
  const rig = instruments.find(({ kind }) => kind === 'forceGauge' || kind === 'loadFrame')?.code ?? '';
  const charts = useLoaded(
    () => (rig === '' ? Promise.resolve({ items: [], nextCursor: null }) : ask(chartsResponse, 'GET', `control-charts?instrument=${rig}`)),
    [rig],
  );
  if (rig === '') return null;
  const upTo = (charts.answer?.items ?? []).map((chart) => ({
    ...chart,
    points: chart.points.filter((point) => point.benchDay <= benchDay),
  }));
  const told = ofDay(upTo, method.slug, benchDay);
  return (
    <section>
      <h2>The rig up to that day</h2>
      <Loading of={charts} />
      {charts.answer && told.length === 0 && <p class="soft">There is no control pull on {rig} up to then.</p>}
      {told.map(({ method: pulled, controlLine, points }) => (
        <div key={pulled + controlLine.code + controlLine.lot}>
          <p>
            {rig}, {controlLine.name} by {nameOf(pulled)}
          </p>
          <ChartPlot points={points} marked={benchDay} />
        </div>
      ))}
    </section>
  );
}

type Charts = z.infer<typeof chartsResponse>['items'];

/** Of the lot that was pulled that day, by the method of the readings where it was pulled by that; else what was pulled last. */
function ofDay(charts: Charts, method: string, day: string): Charts {
  const lastOf = ({ points }: Charts[number]) => points.at(-1)?.benchDay ?? '';
  const latest = charts.map(lastOf).reduce((one, other) => (one > other ? one : other), '');
  const own = charts.filter((chart) => chart.method === method && lastOf(chart) === day);
  return own.length > 0 ? own : charts.filter((chart) => latest !== '' && lastOf(chart) === latest);
}
