import type { BenchTask } from '../bench/bench-task.js';
import type { DemoContent } from '../bench/demo-content.js';

/** What the second person does with a submission. */
export type DemoReview =
  | { readonly decision: 'accepted'; readonly setAside: readonly { specimen: number; reason: string }[]; readonly words: string | null }
  | { readonly decision: 'refused'; readonly reason: string }
  | {
      readonly decision: 'returned';
      readonly kind: 'unit' | 'apparatus';
      readonly specimens: readonly number[];
      readonly question: string;
      /** Null while the tester has not answered. */
      readonly reply: { readonly answer: string; readonly corrected: DemoContent } | null;
    };

/** A submission with its fate. */
export interface DemoHandIn {
  readonly task: BenchTask;
  readonly content: DemoContent;
  /** Null: it waits in the queue. */
  readonly review: DemoReview | null;
  readonly withdrawal: { readonly on: string; readonly reason: string } | null;
}

export const PLAINLY_ACCEPTED: DemoReview = { decision: 'accepted', setAside: [], words: null };
