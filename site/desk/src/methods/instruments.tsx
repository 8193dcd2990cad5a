import { z } from 'zod';
import {
  calibrationRequest,
  instrumentRequest,
  instrumentResponse,
  instrumentsResponse,
} from '../../../../api/contract/endpoints/instruments.js';
import { INSTRUMENT_KINDS, INSTRUMENT_UNITS } from '../../../../api/contract/instrument-kinds.js';
import { correctionAt } from '../correct/correction-at.js';
import { allPages } from '../http/all-pages.js';
import { ask } from '../http/ask.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { FoldedForm } from '../parts/folded-form.js';
import { useLoaded } from '../parts/use-loaded.js';
import { dayOf } from '../words/day-of.js';
import { KIND_WORDS, optionsOf } from '../words/kind-words.js';

const certificateRequest = calibrationRequest.safeExtend({ code: z.string() });

const UNIT_CHOICES = INSTRUMENT_UNITS.map((symbol) => [symbol, symbol] as const);

/** Instruments with their certificates. */
export function Instruments() {
  const instruments = useLoaded(() => allPages(instrumentsResponse, 'instruments'));
  const known = instruments.answer ?? [];
  return (
    <>
      <h2>Instruments</h2>
      <Loading of={instruments} />
      {instruments.answer?.length === 0 && <p class="soft">None yet. A house begins with a force gauge and its certificate.</p>}
      <ul class="rows">
        {known.map(({ code, kind, name, capacity, calibrations }) => (
          <li key={code}>
            <p>
              <a class="code" href={correctionAt('instrument', code)}>
                {code}
              </a>{' '}
              {name}{' '}
              <span class="soft">
                {KIND_WORDS[kind]}, up to {capacity.text} {capacity.unit}
              </span>
            </p>
            <span class={calibrations.length === 0 ? 'signal' : 'soft'}>
              {calibrations.length === 0
                ? 'no certificate'
                : `certificate ${calibrations.at(-1)?.certificate ?? ''} until ${dayOf(calibrations.at(-1)?.validUntil ?? '')}`}
            </span>
          </li>
        ))}
      </ul>
      {instruments.answer && (
        <FoldedForm what="Add an instrument" count={known.length}>
          <Form
            schema={instrumentRequest}
            submit="Add the instrument"
            keptAs="instrument"
            isRepeated
            fields={[
              { name: 'code', label: 'Short code on it', hint: 'For instance R1' },
              { name: 'name', label: 'What the bench calls it' },
              { name: 'kind', label: 'Kind', kind: 'choice', options: optionsOf(INSTRUMENT_KINDS, KIND_WORDS) },
              { name: 'capacity/text', label: 'Largest value', kind: 'decimal' },
              { name: 'capacity/unit', label: 'Its unit', kind: 'choice', options: UNIT_CHOICES },
              { name: 'resolution/text', label: 'Smallest step', kind: 'decimal' },
              { name: 'resolution/unit', label: 'Unit of the step', kind: 'choice', options: UNIT_CHOICES },
            ]}
            onSend={async (request) => {
              const { code } = await ask(instrumentResponse, 'POST', 'instruments', { body: request });
              instruments.again();
              return `${code} is on record. Give it its certificate.`;
            }}
          />
        </FoldedForm>
      )}
      {known.length > 0 && (
        <FoldedForm what="Add a certificate" count={known.flatMap(({ calibrations }) => calibrations).length}>
          <Certificate codes={known.map(({ code }) => code)} onAdded={instruments.again} />
        </FoldedForm>
      )}
    </>
  );
}

function Certificate({ codes, onAdded }: { codes: readonly string[]; onAdded: () => void }) {
  return (
    <Form
      schema={certificateRequest}
      submit="Add the certificate"
      keptAs="certificate"
      isRepeated
      fields={[
        { name: 'code', label: 'Of the instrument', kind: 'choice', options: codes.map((code) => [code, code] as const) },
        { name: 'certificate', label: 'Number of the certificate' },
        { name: 'validFrom', label: 'First day', kind: 'date' },
        { name: 'validUntil', label: 'Last day', kind: 'date' },
        { name: 'correctionPercent', label: 'Correction to add, %', kind: 'decimal', value: '0' },
        { name: 'expandedUncertaintyPercent', label: 'Expanded uncertainty U, %', kind: 'decimal' },
        { name: 'coverageFactor', label: 'Coverage factor k', kind: 'decimal', value: '2' },
      ]}
      onSend={async ({ code, ...body }) => {
        await ask(instrumentResponse, 'POST', `instruments/${code}/calibrations`, { body });
        onAdded();
        return `The certificate of ${code} is on record.`;
      }}
    />
  );
}
