import { possibleActionsResponse, queueResponse } from '../../../../api/contract/endpoints/reviews.js';
import { submissionResponse, submissionsResponse } from '../../../../api/contract/endpoints/submissions.js';
import { ask } from '../http/ask.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { DecideTogether } from '../review/decide-together.js';
import { dayOf } from '../words/day-of.js';

const AT_ONCE = 20;

/** What waits, oldest first, with who is at it; then accepted ones that a later control pull put in doubt. */
export function ReviewQueue() {
  const queue = useLoaded(async () => {
    const { items, nextCursor } = await ask(queueResponse, 'GET', `review-queue?limit=${AT_ONCE}`);
    const rows = await Promise.all(items.map(async (submission) => ({ submission, claim: await claimOn(submission.reference) })));
    return { rows, hasMore: nextCursor !== null };
  });
  const doubts = useLoaded(async () => {
    const { items } = await ask(submissionsResponse, 'GET', 'submissions?inDoubt=true&limit=100');
    return Promise.all(items.map(({ reference }) => ask(submissionResponse, 'GET', `submissions/${reference}`)));
  });
  return (
    <>
      <h1>Review</h1>
      <Loading of={queue} />
      {queue.answer?.rows.length === 0 && <p class="lede">Nothing waits. What testers hand in appears here, oldest first.</p>}
      <ul class="rows">
        {queue.answer?.rows.map(({ submission: { reference, spool, method, benchDay, tester, findings, revision }, claim }) => (
          <li key={reference}>
            <p>
              <a href={`/desk/review-one/?reference=${reference}`}>
                <span class="code">{spool}</span>&nbsp;{method.slug}
              </a>
              <br />
              <span class="soft">
                {reference}
                {revision > 1 && `, revision ${revision}`}, {tester}, pulled {dayOf(benchDay)}
              </span>
            </p>
            <span>
              {countOf(findings)}
              {claim !== null && (
                <>
                  <br />
                  <span class="signal">{claim}</span>
                </>
              )}
            </span>
          </li>
        ))}
      </ul>
      {queue.answer && (
        <DecideTogether
          are="waiting"
          submissions={queue.answer.rows.filter(({ claim }) => claim === null).map(({ submission }) => submission)}
          onDecided={queue.again}
        />
      )}
      {queue.answer?.hasMore === true && <p class="soft">The oldest {AT_ONCE} are shown; more follow as these are decided.</p>}
      {doubts.answer && doubts.answer.length > 0 && (
        <>
          <h2>In doubt since they were accepted</h2>
          <p>A control pull put their rig out of control. An edition does not close over an open doubt.</p>
          <ul class="rows">
            {doubts.answer.map(({ reference, spool, method, benchDay }) => (
              <li key={reference}>
                <p>
                  <a href={`/desk/review-one/?reference=${reference}`}>
                    <span class="code">{spool}</span>&nbsp;{method.slug}
                  </a>
                </p>
                <span class="soft">
                  {reference}, {dayOf(benchDay)}
                </span>
              </li>
            ))}
          </ul>
          <DecideTogether are="inDoubt" submissions={doubts.answer} onDecided={doubts.again} />
        </>
      )}
    </>
  );
}

/** Who is at it, in the server's words; null where nobody else is. */
async function claimOn(reference: string): Promise<string | null> {
  const { items } = await ask(possibleActionsResponse, 'GET', `submissions/${reference}/actions`);
  const why = items.find(({ action }) => action === 'claim')?.why ?? null;
  return why?.replace(/ until .*/, '') ?? null;
}

function countOf(findings: readonly { severity: string }[]): string {
  const held = findings.filter(({ severity }) => severity === 'held').length;
  const notes = findings.filter(({ severity }) => severity === 'note').length;
  return [held > 0 ? `${held} to answer` : 'nothing to answer', notes > 0 && `${notes} ${notes === 1 ? 'note' : 'notes'}`]
    .filter(Boolean)
    .join(', ');
}
