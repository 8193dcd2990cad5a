import { wordsFor } from '../house/finding-words.js';
import type { DemoHandIn, DemoReview } from '../season/hand-in.js';
import { contentOf, testerOf } from './hand-in-day.js';
import type { HouseClient } from './house-client.js';
import { noted } from './stage.js';
import type { Stage } from './stage.js';

interface Waiting {
  readonly reference: string;
  readonly version: number;
  readonly findings: readonly { readonly id: string; readonly code: string; readonly severity: string }[];
}

type Returned = DemoReview & { decision: 'returned' };

/** The morning after: the reviewers share the queue; a question is answered, the corrected submission reviewed, the same day. */
export async function reviewDay(stage: Stage, handIns: readonly DemoHandIn[], day: string): Promise<void> {
  stage.clock.moveTo(day, 10);
  const queue = await readQueue(stage);
  const due = handIns.flatMap((handIn, index) =>
    handIn.review ? [{ handIn, review: handIn.review, reviewer: reviewerAt(stage, index) }] : [],
  );
  for (const { handIn, review, reviewer } of due) await decide(reviewer, waitingIn(queue, stage, handIn), review);
  const answered = due.flatMap(({ handIn, review, reviewer }) =>
    review.decision === 'returned' && review.reply ? [{ handIn, review, reply: review.reply, reviewer }] : [],
  );
  if (answered.length === 0) return;
  stage.clock.moveTo(day, 18);
  for (const { handIn, reply } of answered) await answerAndCorrect(stage, { ...handIn, content: reply.corrected }, reply.answer);
  stage.clock.moveTo(day, 20);
  const again = await readQueue(stage);
  for (const { handIn, reviewer } of answered)
    await decide(reviewer, waitingIn(again, stage, handIn), {
      decision: 'accepted',
      setAside: [],
      words: 'The unit is put right; the numbers are as they were.',
    });
}

function reviewerAt({ people: { reviewers } }: Stage, index: number): HouseClient {
  const reviewer = reviewers[index % reviewers.length];
  if (!reviewer) throw new Error('The house has no reviewer; give it at least one.');
  return reviewer;
}

async function readQueue(stage: Stage): Promise<Map<string, Waiting>> {
  const queue = new Map<string, Waiting>();
  let cursor: string | null = '';
  while (cursor !== null) {
    const page: { items: Waiting[]; nextCursor: string | null } = await reviewerAt(stage, 0).get(
      `/v1/review-queue?limit=100${cursor === '' ? '' : `&cursor=${cursor}`}`,
    );
    for (const waiting of page.items) queue.set(waiting.reference, waiting);
    cursor = page.nextCursor;
  }
  return queue;
}

function waitingIn(queue: ReadonlyMap<string, Waiting>, { references }: Stage, { task }: DemoHandIn): Waiting {
  const waiting = queue.get(noted(references, task.key));
  if (!waiting) throw new Error(`${task.key} is not in the review queue, though it was handed in.`);
  return waiting;
}

async function decide(reviewer: HouseClient, { reference, version, findings }: Waiting, review: DemoReview): Promise<void> {
  await reviewer.post(`/v1/submissions/${reference}/reviews`, { version, body: requestOf(findings, review) });
}

function requestOf(findings: Waiting['findings'], review: DemoReview) {
  if (review.decision === 'refused') return { decision: 'refused', reason: review.reason };
  if (review.decision === 'returned') return returnRequest(review);
  const held = findings.filter(({ severity }) => severity === 'held');
  return {
    decision: 'accepted',
    reason: review.words,
    setAside: review.setAside,
    resolutions: held.map(({ id, code }) => ({ finding: id, words: wordsFor(code, review.words) })),
  };
}

const returnRequest = ({ kind, specimens, question }: Returned) => ({ decision: 'returned', query: { kind, specimens, question } });

/** The tester answers the open question and hands in the next revision. */
async function answerAndCorrect(stage: Stage, handIn: DemoHandIn, answer: string): Promise<void> {
  const tester = testerOf(stage, handIn);
  const reference = noted(stage.references, handIn.task.key);
  const { items } = await tester.get<{ items: { id: string; submission: string; answer: string | null }[] }>('/v1/queries');
  const open = items.find((query) => query.submission === reference && query.answer === null);
  if (!open) throw new Error(`${reference} was returned, but its tester sees no open question on it.`);
  await tester.post(`/v1/queries/${open.id}/answer`, { body: { answer } });
  const { version } = await tester.get<{ version: number }>(`/v1/submissions/${reference}`);
  await tester.post(`/v1/submissions/${reference}/revisions`, { version, body: contentOf(stage, handIn) });
}
