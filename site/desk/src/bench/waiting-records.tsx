import { useLoaded } from '../parts/use-loaded.js';
import { forgetRecord, recordsOf } from './kept-records.js';
import type { OfSheet } from './kept-records.js';

/** Records of pulls that go along when the sheet is handed in; read anew with each `round`. */
export function WaitingRecords({ of, round }: { readonly of: OfSheet; readonly round: unknown }) {
  const { accountId, copyId, reference } = of;
  const records = useLoaded(() => recordsOf({ accountId, copyId, reference }), [accountId, copyId, reference, round]);
  if (!records.answer || records.answer.length === 0) return null;
  return (
    <ul class="rows" aria-label="Records of pulls that go along when you hand in">
      {records.answer.map(({ id, name, specimen }) => (
        <li key={id}>
          <p>
            {name} <span class="soft">goes along as the record of specimen {specimen}; kept on this device</span>
          </p>
          <button type="button" onClick={() => void forgetRecord(id).then(records.again)}>
            Leave out<span class="only-heard"> {name}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}
