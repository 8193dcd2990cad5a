import { chartsResponse } from '../../../../api/contract/endpoints/control-pulls.js';
import type { SubmissionResponse } from '../../../../api/contract/endpoints/submissions.js';
import { ask } from '../http/ask.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { ChartPlot } from '../rigs/chart-plot.js';

/** The control pulls of the rig that a submission was pulled on, its day marked. */
export function RigOfTheDay({ submission: { instruments, benchDay } }: { submission: SubmissionResponse }) {
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
  const told = upTo.filter(({ points }) => points.length > 0);
  return (
    <section>
      <h2>The rig up to that day</h2>
      <Loading of={charts} />
      {charts.answer && told.length === 0 && <p class="soft">There is no control pull on {rig} up to then.</p>}
      {told.map(({ method, controlLine, points }) => (
        <div key={method + controlLine.code}>
          <p>
            {rig}, {controlLine.name} by {method}
          </p>
          <ChartPlot points={points} marked={benchDay} />
        </div>
      ))}
    </section>
  );
}
