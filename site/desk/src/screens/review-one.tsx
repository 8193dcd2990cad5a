import { methodVersionResponse } from '../../../../api/contract/endpoints/methods.js';
import { possibleActionsResponse } from '../../../../api/contract/endpoints/reviews.js';
import { submissionResponse } from '../../../../api/contract/endpoints/submissions.js';
import type { ScreenProps } from '../frame/open-screen.js';
import { ask } from '../http/ask.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { ReviewSheet } from '../review/review-sheet.js';

/** One submission before its reviewer; an editor looks at it, and closes what will not come back. */
export function ReviewOne({ account }: ScreenProps) {
  const reference = new URLSearchParams(window.location.search).get('reference') ?? '';
  const opened = useLoaded(async () => {
    const [submission, actions] = await Promise.all([
      ask(submissionResponse, 'GET', `submissions/${reference}`),
      ask(possibleActionsResponse, 'GET', `submissions/${reference}/actions`),
    ]);
    const { slug, number } = submission.method;
    return {
      submission,
      actions: actions.items,
      method: await ask(methodVersionResponse, 'GET', `catalogue/methods/${slug}/versions/${number}`),
    };
  });
  if (opened.answer) return <ReviewSheet {...opened.answer} isReviewer={account.roles.includes('reviewer')} onMoved={opened.again} />;
  return (
    <>
      <h1>Review</h1>
      <Loading of={opened} />
      <p>
        <a href="/desk/review/">To the queue</a>
      </p>
    </>
  );
}
