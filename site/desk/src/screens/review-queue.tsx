import { useState } from 'preact/hooks';
import { rigsResponse } from '../../../../api/contract/endpoints/control-pulls.js';
import { possibleActionsResponse, queueResponse } from '../../../../api/contract/endpoints/reviews.js';
import { submissionResponse, submissionsResponse, type SubmissionResponse } from '../../../../api/contract/endpoints/submissions.js';
import { ask } from '../http/ask.js';
import { Loading } from '../parts/loading.js';
import { useMethodNames } from '../parts/use-method-names.js';
import { useLoaded } from '../parts/use-loaded.js';
import { DecideTogether } from '../review/decide-together.js';
import { dayOf } from '../words/day-of.js';
import { findingKind } from '../words/finding-kind.js';
import { RIG_STATES } from '../words/rig-words.js';

const AT_ONCE = 20;
/** Of these, in sight before somebody asks for the others. */
const IN_SIGHT = 10;

/** What waits, oldest first, with what was found, how its rig stood and who is at it; then accepted ones that a later control pull put in doubt. */
export function ReviewQueue() {
  const nameOf = useMethodNames();
  const [inSight, setInSight] = useState(IN_SIGHT);
  const queue = useLoaded(async () => {
    const { items, nextCursor } = await ask(queueResponse, 'GET', `review-queue?limit=${AT_ONCE}`);
    const stateOf = await rigStates(items);
    const rows = await Promise.all(
      items.map(async (submission) => ({ submission, rig: stateOf(submission), claim: await claimOn(submission.reference) })),
    );
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
        {queue.answer?.rows
          .slice(0, inSight)
          .map(({ submission: { reference, spool, method, benchDay, tester, findings, revision }, rig, claim }) => (
            <li key={reference}>
              <p>
                <a href={`/desk/review-one/?reference=${reference}`}>
                  <span class="code">{spool}</span>&nbsp;{nameOf(method.slug)}
                </a>
                <br />
                <span class="soft">
                  {reference}
                  {revision > 1 && `, revision ${revision}`}, {tester}, pulled {dayOf(benchDay)}
                </span>
              </p>
              <span>
                <Found findings={findings} />
                {rig !== '' && (
                  <>
                    <br />
                    {rig}
                  </>
                )}
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
      {queue.answer && queue.answer.rows.length > inSight && (
        <button type="button" onClick={() => setInSight(AT_ONCE)}>
          {queue.answer.rows.length - inSight} more
        </button>
      )}
      {queue.answer && (
        <DecideTogether
          are="waiting"
          nameOf={nameOf}
          submissions={queue.answer.rows.filter(({ claim }) => claim === null).map(({ submission }) => submission)}
          onDecided={queue.again}
        />
      )}
      {queue.answer?.hasMore === true && <p class="soft">These are the oldest {AT_ONCE}; more follow as these are decided.</p>}
      {doubts.answer && doubts.answer.length > 0 && (
        <>
          <h2>In doubt since they were accepted</h2>
          <p>A control pull put their rig out of control. An edition does not close over an open doubt.</p>
          <ul class="rows">
            {doubts.answer.map(({ reference, spool, method, benchDay }) => (
              <li key={reference}>
                <p>
                  <a href={`/desk/review-one/?reference=${reference}`}>
                    <span class="code">{spool}</span>&nbsp;{nameOf(method.slug)}
                  </a>
                </p>
                <span class="soft">
                  {reference}, {dayOf(benchDay)}
                </span>
              </li>
            ))}
          </ul>
          <DecideTogether are="inDoubt" nameOf={nameOf} submissions={doubts.answer} onDecided={doubts.again} />
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

/** How the rigs of these stood on their days: rig and state in words; empty where none was pulled by that method. */
async function rigStates(items: readonly SubmissionResponse[]): Promise<(submission: SubmissionResponse) => string> {
  const days = [...new Set(items.map(({ benchDay }) => benchDay))];
  const rigs = new Map(
    await Promise.all(days.map(async (day) => [day, (await ask(rigsResponse, 'GET', `rigs?day=${day}`)).items] as const)),
  );
  return ({ benchDay, instruments, method }) =>
    (rigs.get(benchDay) ?? [])
      .filter(({ instrument, method: pulled }) => pulled === method.slug && instruments.some(({ code }) => code === instrument))
      .map(({ instrument, state }) => `${instrument} ${RIG_STATES[state].replace(/:.*/, '')}`)
      .join(', ');
}

/** Kinds of what was found: what is to be answered first. */
function Found({ findings }: Pick<SubmissionResponse, 'findings'>) {
  const kindsOf = (severity: string) => [
    ...new Set(findings.filter((one) => one.severity === severity).map(({ code }) => findingKind(code))),
  ];
  const [held, notes] = [kindsOf('held'), kindsOf('note')];
  return (
    <>
      {held.length > 0 ? `To answer: ${held.join('; ')}` : 'Nothing to answer'}
      {notes.length > 0 && <span class="soft">. Noted: {notes.join('; ')}</span>}
    </>
  );
}
