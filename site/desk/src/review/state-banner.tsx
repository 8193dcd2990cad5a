import type { SubmissionResponse } from '../../../../api/contract/endpoints/submissions.js';
import { dayOf, timeOf } from '../words/day-of.js';
import { STATES } from '../words/state-words.js';

/** What has become of a submission meanwhile: who did what, and when. */
export function StateBanner({ submission: { state, revision, reviews, handedInAt, tester } }: { submission: SubmissionResponse }) {
  const last = reviews.at(-1);
  const when = (at: string) => `${dayOf(at)}, ${timeOf(new Date(at))}`;
  return (
    <p class="banner" role="status">
      {last && last.revision === revision ? (
        <>
          {last.reviewer} has {last.decision} it ({when(last.at)}){last.reason !== null && `: ${last.reason.replace(/\.$/, '')}`}.
        </>
      ) : (
        <>
          {tester} handed in revision {revision}
          {handedInAt !== null && ` (${when(handedInAt)})`}. It{' '}
          {state === 'submitted' || state === 'returned' ? STATES[state] : `is ${STATES[state]}`}.
        </>
      )}
    </p>
  );
}
