import { useState } from 'preact/hooks';
import { z } from 'zod';
import type { InstrumentResponse } from '../../../../api/contract/endpoints/instruments.js';
import { submissionContent } from '../../../../api/contract/submission-content.js';
import { Form } from '../parts/form.js';
import { useForgetForm } from '../parts/use-typed.js';
import { keepContext, ownZone, today } from './bench-context.js';
import type { BenchContext } from './bench-context.js';

interface Props {
  readonly accountId: string;
  readonly context: BenchContext | null;
  readonly editions: readonly { readonly slug: string; readonly name: string }[];
  readonly instruments: readonly InstrumentResponse[];
  readonly onKept: (context: BenchContext) => void;
}

const { benchDay, zone, ambient, edition, instruments: codes } = submissionContent.shape;
const contextRequest = z.strictObject({ edition, benchDay, zone, instruments: codes, ambient });

const KEPT_AS = 'day';

/** Typed once a day, shown on every sheet of it. */
export function ContextForm({ accountId, context, editions, instruments, onKept }: Props) {
  const [unit, setUnit] = useState(context?.temperatureUnit ?? '°C');
  const forget = useForgetForm(KEPT_AS);
  return (
    <Form
      schema={contextRequest}
      submit="Keep for the day"
      keptAs={KEPT_AS}
      fields={[
        {
          name: 'edition',
          label: 'Edition',
          kind: 'choice',
          isStanding: true,
          options: editions.map(({ slug, name }) => [slug, name] as const),
          value: context?.edition ?? '',
        },
        { name: 'benchDay', label: 'Bench day', kind: 'date', value: context?.benchDay ?? today() },
        { name: 'zone', label: 'Time zone', isStanding: true, value: context?.zone ?? ownZone() },
        {
          name: 'ambient/temperature/value',
          label: `Air, ${unit}`,
          kind: 'decimal',
          value: context?.temperature ?? '',
        },
        {
          name: 'ambient/temperature/unit',
          label: 'Displayed in',
          kind: 'choice',
          isStanding: true,
          options: [
            ['°C', '°C'],
            ['°F', '°F'],
          ],
          value: unit,
        },
        { name: 'ambient/humidityPercent', label: 'Humidity, %', kind: 'decimal', value: context?.humidityPercent ?? '' },
        {
          name: 'instruments',
          label: 'Instruments on the bench today',
          kind: 'several',
          options: instruments.map(({ code, name }) => [code, `${code}, ${name}`] as const),
          ticked: context?.instruments ?? [],
        },
      ]}
      onSend={(day) => {
        const { temperature, humidityPercent } = day.ambient;
        const kept = { ...day, temperature: temperature.value, temperatureUnit: temperature.unit, humidityPercent };
        setUnit(temperature.unit);
        keepContext(accountId, kept);
        // The form is put elsewhere on the page by this, and begins anew there.
        forget();
        onKept(kept);
        return Promise.resolve('Kept on this device for the day.');
      }}
    />
  );
}
