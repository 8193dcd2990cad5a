import { useState } from 'preact/hooks';
import { auditResponse } from '../../../../api/contract/endpoints/audit.js';
import type { AccountResponse } from '../../../../api/contract/endpoints/accounts.js';
import { ask } from '../http/ask.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { textIn } from '../parts/text-in.js';
import { dayOf, timeOf } from '../words/day-of.js';

const AT_ONCE = 50;

/** The record of changes, newest first, by object; persons by name. */
export function AuditTrail({ accounts }: { accounts: readonly AccountResponse[] }) {
  const [object, setObject] = useState('');
  const [person, setPerson] = useState('');
  const [cursor, setCursor] = useState('');
  const trail = useLoaded(() => {
    const query = new URLSearchParams({
      limit: String(AT_ONCE),
      ...(object !== '' && { objectId: object }),
      ...(cursor !== '' && { cursor }),
    });
    return ask(auditResponse, 'GET', `audit?${query.toString()}`);
  }, [object, cursor]);
  const nameOf = (id: string | null) => (id === null ? 'the program' : (accounts.find((account) => account.id === id)?.displayName ?? id));
  const shown = trail.answer?.items.filter(({ actorId }) => person === '' || actorId === person) ?? [];
  const next = trail.answer?.nextCursor ?? null;
  return (
    <>
      <form
        class="form"
        onSubmit={(event) => {
          event.preventDefault();
          setCursor('');
          setObject(textIn(new FormData(event.currentTarget), 'object').trim());
        }}
      >
        <label class="field">
          Reference, code or id of the object
          <input name="object" autocomplete="off" />
        </label>
        <label class="field">
          Person, among those shown
          <select value={person} onChange={(event) => setPerson(event.currentTarget.value)}>
            <option value="">everybody</option>
            {accounts.map(({ id, displayName }) => (
              <option key={id} value={id}>
                {displayName}
              </option>
            ))}
          </select>
        </label>
        <div class="send">
          <button type="submit">Look</button>
        </div>
      </form>
      <Loading of={trail} />
      <ul class="rows">
        {shown.map(({ id, at, actorId, action, objectType, objectId }) => (
          <li key={id}>
            <p>
              {nameOf(actorId)}: {action}
              <br />
              <span class="soft">
                {objectType} {objectId}
              </span>
            </p>
            <span class="soft">
              {dayOf(at)}, {timeOf(new Date(at))}
            </span>
          </li>
        ))}
      </ul>
      {trail.answer && shown.length === 0 && <p class="soft">Nothing of that on this page of the record.</p>}
      {next !== null && (
        <button type="button" onClick={() => setCursor(next)}>
          Earlier
        </button>
      )}
    </>
  );
}
