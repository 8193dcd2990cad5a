import { useState } from 'preact/hooks';
import type { z } from 'zod';
import { auditQuery, auditResponse, type auditEventResponse } from '../../../../api/contract/endpoints/audit.js';
import type { AccountResponse } from '../../../../api/contract/endpoints/accounts.js';
import { ask } from '../http/ask.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { actWords } from '../words/act-words.js';
import { dayOf, timeOf } from '../words/day-of.js';

const AT_ONCE = 10;

/** The record of changes, newest first, by person, object and days; persons by name. */
export function AuditTrail({ accounts }: { accounts: readonly AccountResponse[] }) {
  const [asked, setAsked] = useState<Record<string, string>>({});
  const [cursor, setCursor] = useState('');
  const trail = useLoaded(() => {
    const query = new URLSearchParams({ limit: String(AT_ONCE), ...asked, ...(cursor !== '' && { cursor }) });
    return ask(auditResponse, 'GET', `audit?${query.toString()}`);
  }, [asked, cursor]);
  const nameOf = (id: string | null): string =>
    id === null ? 'the program' : (accounts.find((account) => account.id === id)?.displayName ?? id);
  const next = trail.answer?.nextCursor ?? null;
  return (
    <>
      <Form
        schema={auditQuery}
        submit="Look"
        keptAs={null}
        fields={[
          {
            name: 'actorId',
            label: 'Who',
            kind: 'choice',
            options: [['', 'everybody'], ...accounts.map(({ id, displayName }) => [id, displayName] as const)],
          },
          { name: 'objectId', label: 'Reference, code or id of the object' },
          { name: 'from', label: 'From', kind: 'date' },
          { name: 'to', label: 'To', kind: 'date' },
        ]}
        prepare={(entered) => Object.fromEntries(Object.entries(entered).filter(([, value]) => value !== ''))}
        onSend={({ actorId, objectId, from, to }) => {
          const given = Object.entries({ actorId, objectId, from, to }).flatMap(([name, value]) => (value ? [[name, value] as const] : []));
          setCursor('');
          setAsked(Object.fromEntries(given));
          return Promise.resolve('');
        }}
      />
      <Loading of={trail} />
      <ul class="rows">
        {trail.answer?.items.map((event) => (
          <li key={event.id}>
            <p>
              {nameOf(event.actorId)}: {actWords(event.action)}
              <br />
              <span class="soft">{objectWords(event, nameOf)}</span>
            </p>
            <span class="soft">
              {dayOf(event.at)}, {timeOf(new Date(event.at))}
            </span>
          </li>
        ))}
      </ul>
      {trail.answer?.items.length === 0 && <p class="soft">Nothing of that is on record.</p>}
      {next !== null && (
        <button type="button" onClick={() => setCursor(next)}>
          Earlier
        </button>
      )}
    </>
  );
}

type Event = z.infer<typeof auditEventResponse>;
const BARE_ID = /^[0-9a-f]{8}-[0-9a-f-]{27}$/;

/** An object by its name: of a person, of what was made; else its reference or code. */
function objectWords({ objectType, objectId, objectName }: Event, nameOf: (id: string) => string): string {
  if (objectType === 'account') return nameOf(objectId);
  return BARE_ID.test(objectId) ? `${actWords(objectType)} ${objectName ?? objectId}` : objectId;
}
