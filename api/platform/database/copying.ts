import type { Transaction } from './scope.js';

/** Sends rows in the words of COPY over the connection of a transaction, after what was asked of it before. */
export type Copying = (statement: string, bytes: Uint8Array) => Promise<void>;

const ofTransactions = new WeakMap<Transaction, Copying>();

export function letCopy(tx: Transaction, copying: Copying): void {
  ofTransactions.set(tx, copying);
}

export function copyingOf(tx: Transaction): Copying {
  const copying = ofTransactions.get(tx);
  if (!copying) throw new Error('Rows are copied within a transaction of the database alone.');
  return copying;
}
