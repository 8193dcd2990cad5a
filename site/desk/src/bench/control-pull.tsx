import { controlLinesResponse, controlPullRequest, controlPullResponse } from '../../../../api/contract/endpoints/control-pulls.js';
import type { InstrumentResponse } from '../../../../api/contract/endpoints/instruments.js';
import { methodVersionResponse } from '../../../../api/contract/endpoints/methods.js';
import type { MethodResponse } from '../../../../api/contract/endpoints/methods.js';
import { RIG_KINDS } from '../../../../api/contract/instrument-kinds.js';
import { ask } from '../http/ask.js';
import { Cautions } from '../parts/cautions.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { RIG_STATES } from '../words/rig-words.js';
import { readingsFrom } from './readings-from.js';
import type { BenchContext } from './bench-context.js';

interface Props {
  readonly context: BenchContext;
  readonly instruments: readonly InstrumentResponse[];
  readonly methods: readonly MethodResponse[];
  readonly onPulled: () => void;
}

const UNITS = ['N', 'lbf', 'kgf'];
const READINGS = [0, 1, 2];

/** Methods that pull, those first that tie and rub nothing: a control line is pulled as it is. */
async function pullingMethods(methods: readonly MethodResponse[]): Promise<MethodResponse[]> {
  const pulling = methods.filter(({ versions }) => versions.at(-1)?.yields.includes('breakingForce'));
  const areTreated = await Promise.all(
    pulling.map(async ({ slug, versions }) => {
      const { series } = await ask(methodVersionResponse, 'GET', `catalogue/methods/${slug}/versions/${versions.at(-1)?.number ?? 1}`);
      return series.some((one) => 'treatment' in one && one.treatment !== null);
    }),
  );
  return [...pulling.filter((_, i) => !areTreated[i]), ...pulling.filter((_, i) => areTreated[i])];
}

/** The first act of a day: three numbers on the reference spool, and the answer at once. */
export function ControlPull({ context, instruments, methods, onPulled }: Props) {
  const house = useLoaded(async () => {
    const [lines, pulling] = await Promise.all([ask(controlLinesResponse, 'GET', 'control-lines'), pullingMethods(methods)]);
    return { lines: lines.items, pulling };
  });
  const rigs = instruments.filter(({ code, kind }) => RIG_KINDS.includes(kind) && context.instruments.includes(code));
  if (!house.answer) return <Loading of={house} />;
  const { lines, pulling } = house.answer;
  if (lines.length === 0) return <p>The house has no control line yet: an editor puts one on record under “Methods”.</p>;
  if (rigs.length === 0) return <p>None of today’s instruments is a rig that pulls; tick one above.</p>;
  return (
    <>
      <Cautions />
      <Form
        key={context.benchDay}
        schema={controlPullRequest}
        submit="Pulled"
        keptAs={`control-pull ${context.benchDay}`}
        isRepeated
        fields={[
          { name: 'instrument', label: 'Rig', kind: 'choice', options: rigs.map(({ code, name }) => [code, `${code}, ${name}`] as const) },
          {
            name: 'controlLine',
            label: 'Control line',
            kind: 'choice',
            options: lines.map(({ code, name, lot }) => [code, `${code}, ${name}, lot ${lot}`] as const),
          },
          {
            name: 'method',
            label: 'Method',
            kind: 'choice',
            options: pulling.map(({ slug, name }) => [slug, name] as const),
          },
          { name: 'unit', label: 'Displayed in', kind: 'choice', options: UNITS.map((unit) => [unit, unit] as const) },
          ...READINGS.map((i) => ({ name: `readings/${i}/text`, label: `Pull ${i + 1}`, kind: 'reading' as const })),
        ]}
        prepare={({ unit, ...entered }) => ({
          ...entered,
          benchDay: context.benchDay,
          readings: readingsFrom(entered['readings'], String(unit)),
          ambient: { temperature: { text: context.temperature, unit: context.temperatureUnit }, humidityPercent: context.humidityPercent },
        })}
        onSend={async (pull, key) => {
          const { instrument } = pull;
          const { state, signals, doubted, strike } = await ask(controlPullResponse, 'POST', 'control-pulls', {
            body: pull,
            key,
          });
          onPulled();
          if (strike) return `${instrument}: on record, marked as late. ${strike.reason} Pull once more where today needs evidence.`;
          const why = signals.length > 0 ? ` It signals: ${signals.join(', ')}.` : '';
          const doubt =
            doubted > 0
              ? ` In doubt since the last good pull: ${doubted === 1 ? 'a submission' : `${doubted} submissions`}; a reviewer looks.`
              : '';
          return `${instrument}: ${state === null || state === 'noEvidence' ? 'on record; there are no limits yet' : RIG_STATES[state]}.${why}${doubt}`;
        }}
      />
    </>
  );
}
