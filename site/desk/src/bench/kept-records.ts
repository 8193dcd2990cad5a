/** Records of pulls that wait on this device: dropped on a sheet, sent once it was handed in. Each is its account's alone. */
import { newKey } from '../http/new-key.js';

/** The record of a pull, as the logger wrote it, with the specimen that it is of. */
export interface PullRecord {
  /** Key of its sending, too, so that a second attempt is the same request. */
  readonly id: string;
  readonly accountId: string;
  /** Copy of the sheet on which it was dropped. */
  readonly copyId: string;
  /** Of the draft on the server; null until that has one. */
  readonly reference: string | null;
  readonly specimen: number;
  readonly name: string;
  readonly text: string;
}

/** What belongs to a sheet: by its reference, or by its copy while it has none. */
export type OfSheet = Pick<PullRecord, 'accountId' | 'reference'> & { readonly copyId: string | null };

const STORE = 'records';

function answerOf<Answer>(request: IDBRequest<Answer>): Promise<Answer> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(new Error('This device keeps no files for this page. Add the record once the readings are handed in.'));
  });
}

async function store(mode: IDBTransactionMode): Promise<IDBObjectStore> {
  const opening = indexedDB.open('desk', 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore(STORE, { keyPath: 'id' });
  return (await answerOf(opening)).transaction(STORE, mode).objectStore(STORE);
}

const put = async (record: PullRecord): Promise<unknown> => answerOf((await store('readwrite')).put(record));

/** @returns its id */
export async function keepRecord(record: Omit<PullRecord, 'id'>): Promise<string> {
  const id = newKey();
  await put({ ...record, id });
  return id;
}

export async function forgetRecord(id: string): Promise<void> {
  await answerOf((await store('readwrite')).delete(id));
}

/** References of what waits for its records. */
export async function referencesWaiting(accountId: string): Promise<ReadonlySet<string>> {
  const all = (await answerOf((await store('readonly')).getAll())) as PullRecord[];
  return new Set(all.flatMap((one) => (one.accountId === accountId && one.reference !== null ? [one.reference] : [])));
}

/** Those of a sheet, by specimen; what was dropped before the draft had a reference gets it now. */
export async function recordsOf({ accountId, copyId, reference }: OfSheet): Promise<PullRecord[]> {
  const all = (await answerOf((await store('readonly')).getAll())) as PullRecord[];
  const own = all.filter(
    (one) => one.accountId === accountId && (one.reference === null ? one.copyId === copyId : one.reference === reference),
  );
  const known = own.map((one) => ({ ...one, reference }));
  for (const [i, one] of known.entries()) if (own[i]?.reference !== reference) await put(one);
  return known.sort((one, other) => one.specimen - other.specimen);
}
