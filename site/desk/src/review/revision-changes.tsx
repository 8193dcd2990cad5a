import { changesResponse } from '../../../../api/contract/endpoints/reviews.js';
import type { SubmissionResponse } from '../../../../api/contract/endpoints/submissions.js';
import { ask } from '../http/ask.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';

/** What was asked, what was answered, and what this revision says otherwise than the one before. */
export function RevisionChanges({ submission: { reference, revision, queries } }: { submission: SubmissionResponse }) {
  const changes = useLoaded(
    () => ask(changesResponse, 'GET', `submissions/${reference}/revisions/${revision}/changes`),
    [reference, revision],
  );
  return (
    <section>
      <h2>Since revision {revision - 1}</h2>
      {queries.map(({ id, question, answer }) => (
        <p key={id}>
          Asked: {question}
          <br />
          {answer === null ? <span class="soft">not answered</span> : `Answered: ${answer}`}
        </p>
      ))}
      <Loading of={changes} />
      {changes.answer?.items.length === 0 && <p class="soft">It says the same.</p>}
      {changes.answer && changes.answer.items.length > 0 && (
        <div class="matrix" tabIndex={0} role="region" aria-label="What the revision says otherwise">
          <table class="sheet">
            <thead>
              <tr>
                <th scope="col">Where</th>
                <th scope="col">Before</th>
                <th scope="col">Now</th>
              </tr>
            </thead>
            <tbody>
              {changes.answer.items.map(({ pointer, before, after }) => (
                <tr key={pointer}>
                  <th scope="row">{placeOf(pointer)}</th>
                  <td>{before ?? 'nothing'}</td>
                  <td>{after ?? 'nothing'}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </section>
  );
}

/** "/specimens/3/readings/0/value" → "specimens 3, readings 0, value". */
const placeOf = (pointer: string): string =>
  pointer
    .slice(1)
    .split('/')
    .reduce((words, part) => (/^\d+$/.test(part) ? `${words} ${part}` : `${words}, ${part}`));
