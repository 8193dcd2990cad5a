import { controlLinesResponse, controlPullRequest, controlPullResponse } from '../../../../api/contract/endpoints/control-pulls.js';
import type { InstrumentResponse } from '../../../../api/contract/endpoints/instruments.js';
import type { MethodResponse } from '../../../../api/contract/endpoints/methods.js';
import { RIG_KINDS } from '../../../../api/contract/instrument-kinds.js';
import { ask } from '../http/ask.js';
import { Cautions } from '../parts/cautions.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { RIG_STATES } from '../words/rig-words.js';
import type { BenchContext } from './bench-context.js';

interface Props {
  readonly context: BenchContext;
  readonly instruments: readonly InstrumentResponse[];
  readonly methods: readonly MethodResponse[];
  readonly onPulled: () => void;
}

const UNITS = ['N', 'lbf', 'kgf'];
const READINGS = [0, 1, 2];

const isPulled = ({ versions }: MethodResponse): boolean => versions.at(-1)?.yields.includes('breakingForce') ?? false;

/** The first act of a day: three numbers on the reference spool, and the answer at once. */
export function ControlPull({ context, instruments, methods, onPulled }: Props) {
  const lines = useLoaded(() => ask(controlLinesResponse, 'GET', 'control-lines'));
  const rigs = instruments.filter(({ code, kind }) => RIG_KINDS.includes(kind) && context.instruments.includes(code));
  if (!lines.answer) return <Loading of={lines} />;
  if (lines.answer.items.length === 0) return <p>The house has no control line yet: an editor puts one on record under “Methods”.</p>;
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
            options: lines.answer.items.map(({ code, name, lot }) => [code, `${code}, ${name}, lot ${lot}`] as const),
          },
          {
            name: 'method',
            label: 'Method',
            kind: 'choice',
            options: methods.filter(isPulled).map(({ slug, name }) => [slug, name] as const),
          },
          { name: 'unit', label: 'Displayed in', kind: 'choice', options: UNITS.map((unit) => [unit, unit] as const) },
          ...READINGS.map((i) => ({ name: `readings/${i}/text`, label: `Pull ${i + 1}`, kind: 'reading' as const })),
        ]}
        prepare={({ unit, ...entered }) => ({
          ...entered,
          benchDay: context.benchDay,
          readings: READINGS.map((i) => ({ text: textAt(entered, i), unit })),
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
          const doubt = doubted > 0 ? ` ${doubted} submissions since the last good pull are in doubt; a reviewer looks at them.` : '';
          return `${instrument}: ${state === null ? 'on record' : RIG_STATES[state]}.${why}${doubt}`;
        }}
      />
    </>
  );
}

const textAt = (entered: Record<string, unknown>, i: number): string =>
  (entered['readings'] as Record<number, { text: string }>)[i]?.text.replace(',', '.') ?? '';
