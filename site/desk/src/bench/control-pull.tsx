import { useContext } from 'preact/hooks';
import { controlLinesResponse, controlPullRequest, controlPullResponse } from '../../../../api/contract/endpoints/control-pulls.js';
import type { InstrumentResponse } from '../../../../api/contract/endpoints/instruments.js';
import { methodVersionResponse } from '../../../../api/contract/endpoints/methods.js';
import type { MethodResponse } from '../../../../api/contract/endpoints/methods.js';
import { RIG_KINDS } from '../../../../api/contract/instrument-kinds.js';
import { ask } from '../http/ask.js';
import { Cautions } from '../parts/cautions.js';
import { Form } from '../parts/form.js';
import type { FieldOptions } from '../parts/field-options.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { AccountId } from '../parts/on-device.js';
import { RIG_STATES } from '../words/rig-words.js';
import { signalWords } from '../words/signal-words.js';
import { keepLastPull, lastPull } from './last-pull.js';
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

/** Methods that pull, those first that tie and rub nothing: a control line is pulled as it is, and where one alone does so, by that one. */
async function pullingMethods(methods: readonly MethodResponse[]) {
  const pulling = methods.filter(({ versions }) => versions.at(-1)?.yields.includes('breakingForce'));
  const areTreated = await Promise.all(
    pulling.map(async ({ slug, versions }) => {
      const { series } = await ask(methodVersionResponse, 'GET', `catalogue/methods/${slug}/versions/${versions.at(-1)?.number ?? 1}`);
      return series.some((one) => 'treatment' in one && one.treatment !== null);
    }),
  );
  const bare = pulling.filter((_, i) => !areTreated[i]);
  return { pulling: [...bare, ...pulling.filter((_, i) => areTreated[i])], usual: bare.length === 1 ? (bare[0]?.slug ?? '') : '' };
}

const standing = (name: string, label: string, value = '', options: FieldOptions['options'] = []): FieldOptions => ({
  name,
  label,
  kind: 'choice',
  isStanding: true,
  value,
  options,
});

/** The first act of a day: three numbers on the reference spool, and the answer at once. */
export function ControlPull({ context, instruments, methods, onPulled }: Props) {
  const accountId = useContext(AccountId);
  const house = useLoaded(async () => {
    const [lines, ways] = await Promise.all([ask(controlLinesResponse, 'GET', 'control-lines'), pullingMethods(methods)]);
    return { lines: lines.items, ...ways };
  });
  const rigs = instruments.filter(({ code, kind }) => RIG_KINDS.includes(kind) && context.instruments.includes(code));
  if (!house.answer) return <Loading of={house} />;
  const { lines, pulling, usual } = house.answer;
  const last = lastPull(accountId);
  const newest = lines.toSorted((one, other) => other.addedAt.localeCompare(one.addedAt))[0]?.code;
  const displayed = rigs.length === 1 ? (rigs[0]?.resolution.unit ?? '') : '';
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
          standing(
            'instrument',
            'Rig',
            last.instrument,
            rigs.map(({ code, name }) => [code, `${code}, ${name}`]),
          ),
          standing(
            'controlLine',
            'Control line',
            last.controlLine ?? newest,
            lines.map(({ code, name, lot }) => [code, `${code}, ${name}, lot ${lot}`]),
          ),
          standing(
            'method',
            'Method',
            last.method ?? usual,
            pulling.map(({ slug, name }) => [slug, name]),
          ),
          standing(
            'unit',
            'Displayed in',
            last.unit ?? displayed,
            UNITS.map((unit) => [unit, unit]),
          ),
          ...READINGS.map((i) => ({ name: `readings/${i}/text`, label: `Pull ${i + 1}`, kind: 'reading' as const })),
        ]}
        prepare={({ unit, ...entered }) => ({
          ...entered,
          benchDay: context.benchDay,
          readings: readingsFrom(entered['readings'], String(unit)),
          ambient: { temperature: { text: context.temperature, unit: context.temperatureUnit }, humidityPercent: context.humidityPercent },
        })}
        onSend={async (pull, key) => {
          const { instrument, controlLine, method, readings } = pull;
          const { state, signals, doubted, strike } = await ask(controlPullResponse, 'POST', 'control-pulls', {
            body: pull,
            key,
          });
          keepLastPull(accountId, { instrument, controlLine, method, unit: readings[0]?.unit ?? displayed });
          onPulled();
          if (strike) return `${instrument}: on record, marked as late. ${strike.reason} Pull once more where today needs evidence.`;
          const why = signals.length > 0 ? ` It signals: ${signalWords(signals)}.` : '';
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
