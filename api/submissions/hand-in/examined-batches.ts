import type { TableRows } from '../../platform/database/insert-rows.js';
import type { Piece } from '../intake/spooled-file.js';
import type { SubmissionHead } from '../submissions.store.js';

/** Rows that wait on disk. */
export type Waiting = Pick<TableRows, 'statement'> & { readonly piece: Piece };

/** Submissions that were examined together: their own rows, and where those of their first revisions wait. */
export interface Batch {
  readonly heads: readonly SubmissionHead[];
  readonly revisions: readonly Waiting[];
  readonly instruments: Waiting;
  readonly isFull: boolean;
}

/** The batches of an intake, each examined when it is first asked for; a transaction that is tried again has them all once more. */
export class ExaminedBatches {
  private readonly examined: Batch[] = [];
  private failure: Error | null = null;

  constructor(
    private readonly coming: AsyncIterator<Batch, void>,
    private readonly apart: <Found>(look: () => Promise<Found>) => Promise<Found>,
  ) {}

  /** From the first on. */
  async *[Symbol.asyncIterator](): AsyncGenerator<Batch> {
    for (let index = 0; ; index++) {
      const batch = this.examined[index] ?? (await this.next());
      if (!batch) return;
      yield batch;
    }
  }

  /** Whether more may follow the first, which is examined for it. */
  async areMany(): Promise<boolean> {
    return (await this.next())?.isFull ?? false;
  }

  async examineAll(): Promise<void> {
    while (await this.next());
  }

  private async next(): Promise<Batch | undefined> {
    // What broke stays broken: nothing of it passes for the end.
    if (this.failure) throw this.failure;
    try {
      const { value: batch } = await this.apart(() => this.coming.next());
      if (batch) this.examined.push(batch);
      return batch ?? undefined;
    } catch (error) {
      this.failure = error as Error;
      throw error;
    }
  }
}
