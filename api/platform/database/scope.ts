import type { Prisma } from './generated/client.js';

/** What a store is given inside a transaction. */
export type Transaction = Prisma.TransactionClient;

/** The transaction that everything called from one place works in, as long as it is open. */
export interface Scope {
  transaction: Transaction | null;
  /** Of work whose answer is stored in its own transaction: it stays open until that is written. */
  readonly answer: Answer | null;
}

/** The end of such work, waited for inside its transaction. */
export class Answer {
  readonly written: Promise<void>;
  committed: Promise<unknown> | null = null;
  resolve: () => void = () => undefined;
  reject: (reason: Error) => void = () => undefined;

  constructor() {
    this.written = new Promise((resolve, reject) => {
      this.resolve = resolve;
      this.reject = reject;
    });
    // Nobody waits for it where the work never began a transaction.
    this.written.catch(() => undefined);
  }
}
