import { useState } from 'preact/hooks';
import { z } from 'zod';
import { retirementRequest } from '../../../../api/contract/endpoints/catalogue.js';
import { isSubjectKind } from '../correct/correction-at.js';
import { loadSubject } from '../correct/load-subject.js';
import type { Correction, Retirement, Subject } from '../correct/subject.js';
import { ask } from '../http/ask.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { Photos } from '../parts/photos.js';
import { useLoaded } from '../parts/use-loaded.js';
import { dayOf } from '../words/day-of.js';

/** A row of the catalogue or a certificate, put right: freely while nothing rests on it, with a reason that stays once something does. */
export function Correct() {
  const query = new URLSearchParams(window.location.search);
  const kind = query.get('kind') ?? '';
  const key = query.get('key') ?? '';
  const subject = useLoaded(() =>
    isSubjectKind(kind)
      ? loadSubject(kind, key)
      : Promise.reject(new Error(`There is no kind “${kind}”; go back to the list and choose again.`)),
  );
  const [said, setSaid] = useState('');
  const changed = (words: string) => {
    setSaid(words);
    subject.again();
  };
  return (
    <>
      <h1>{subject.answer?.title ?? 'Correct'}</h1>
      <p class="soft">{subject.answer?.told}</p>
      <Loading of={subject} />
      <p role="status">{said}</p>
      {subject.answer && <Corrections key={subject.answer.version} subject={subject.answer} onChanged={changed} />}
      {subject.answer && kind === 'spool' && (
        <section>
          <h2>Photos of the label</h2>
          <Photos of={`catalogue/spools/${key}`} first="label" canAdd />
        </section>
      )}
      <p>
        <a href={kind === 'instrument' ? '/desk/methods/' : '/desk/catalogue/'}>Back to the list</a>
      </p>
    </>
  );
}

/** One form, whatever can be corrected: which it is of is chosen above it. */
function Corrections({ subject, onChanged }: { subject: Subject; onChanged: (words: string) => void }) {
  const [path, setPath] = useState(subject.corrections[0]?.path);
  const chosen = subject.corrections.find((one) => one.path === path);
  return (
    <>
      {subject.corrections.length === 0 && <p class="soft">There is nothing to correct yet.</p>}
      {subject.corrections.length > 1 && (
        <label class="field">
          What is to be corrected
          <select value={chosen?.path} onChange={(event) => setPath(event.currentTarget.value)}>
            {subject.corrections.map(({ path, heading }) => (
              <option key={path} value={path}>
                {heading}
              </option>
            ))}
          </select>
        </label>
      )}
      {chosen && (
        <section key={chosen.path}>
          {subject.corrections.length === 1 && <h2>{chosen.heading}</h2>}
          <One correction={chosen} version={subject.version} onChanged={onChanged} />
        </section>
      )}
      {subject.former.length > 0 && <Former of={subject} />}
      {subject.retirement && <Retiring of={subject.retirement} version={subject.version} onChanged={onChanged} />}
    </>
  );
}

const asText = (value: unknown): string => (typeof value === 'string' ? value : value === null ? '' : JSON.stringify(value));

const REASON = {
  name: 'reason',
  label: 'Why it is changed',
  kind: 'words',
  hint: 'Needed once somebody has handed in readings that rest on it. What stood there is kept, and readers are told with the next erratum.',
} as const;

function One({ correction, version, onChanged }: { correction: Correction; version: number; onChanged: (words: string) => void }) {
  const { schema, fields, isPartial, method, path, heading } = correction;
  const prepare = (entered: Record<string, unknown>) =>
    Object.fromEntries(
      Object.entries(entered).filter(([name, value]) => {
        if (name === 'reason') return value !== '';
        return !isPartial || asText(value) !== (fields.find((field) => field.name === name)?.value ?? '');
      }),
    );
  return (
    <Form
      schema={schema}
      submit="Correct it"
      keptAs={`correct ${method} ${path}`}
      fields={[...fields, REASON]}
      prepare={prepare}
      onSend={async (request) => {
        await ask(z.unknown(), method, path, { body: request, version });
        onChanged(`Corrected: ${heading.toLowerCase()}.`);
        return '';
      }}
    />
  );
}

function Former({ of: { former } }: { of: Subject }) {
  return (
    <section>
      <h2>What it said before</h2>
      <ul class="rows">
        {former.map(({ was, reason, at, rested }) => (
          <li key={at}>
            <p>
              {Object.entries(was)
                .map(([name, value]) => `${name} ${asText(value)}`)
                .join(', ')}
              <br />
              {reason} <span class="soft">{dayOf(at)}</span>
            </p>
            <span class="soft">
              {rested.submissions.length} submissions rested on it
              {rested.editions.length > 0 && ` in ${rested.editions.join(', ')}`}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Retiring({ of: { path, since }, version, onChanged }: { of: Retirement; version: number; onChanged: (words: string) => void }) {
  if (since)
    return (
      <section>
        <h2>Retired</h2>
        <p>
          Since {dayOf(since.on)}: {since.reason}
        </p>
        <Form
          schema={z.object({})}
          submit="Take it into use again"
          keptAs={null}
          fields={[]}
          onSend={async () => {
            await ask(z.unknown(), 'DELETE', path, { version });
            onChanged('It is in use again.');
            return '';
          }}
        />
      </section>
    );
  return (
    <details>
      <summary>Retire it</summary>
      <p>Nothing later is put under it, pulled of it or measured with it; all that is on record stands and stays readable.</p>
      <Form
        schema={retirementRequest}
        submit="Retire it"
        keptAs={`retire ${path}`}
        fields={[{ name: 'reason', label: 'Why', kind: 'words' }]}
        onSend={async (request) => {
          await ask(z.unknown(), 'POST', path, { body: request, version });
          onChanged('It is retired.');
          return '';
        }}
      />
    </details>
  );
}
