import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { z } from 'zod';
import { answerRequest, queriesResponse, queryResponse } from '../../../../api/contract/endpoints/reviews.js';
import { submissionResponse, submissionsResponse } from '../../../../api/contract/endpoints/submissions.js';
import { referencesWaiting } from '../bench/kept-records.js';
import { RecordsToSend } from '../bench/records-to-send.js';
import { allPages } from '../http/all-pages.js';
import { ask } from '../http/ask.js';
import type { ScreenProps } from '../frame/open-screen.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { Photos } from '../parts/photos.js';
import { useAct } from '../parts/use-act.js';
import { useMethodNames } from '../parts/use-method-names.js';
import { useLoaded } from '../parts/use-loaded.js';
import { dayOf } from '../words/day-of.js';
import { STATES } from '../words/state-words.js';
import { failureWords } from '../words/failure-words.js';

const AT_ONCE = 10;

/** What was asked first, then everything handed in, newest first. */
export function OwnSubmissions({ account }: ScreenProps) {
  const loaded = useLoaded(async () => {
    const [queries, list, waiting] = await Promise.all([
      allPages(queriesResponse, 'queries'),
      ask(submissionsResponse, 'GET', 'submissions?limit=100'),
      referencesWaiting(account.id).catch(() => new Set<string>()),
    ]);
    return { open: queries.filter(({ answer }) => answer === null), list: list.items, waiting };
  });
  const [shown, setShown] = useState(AT_ONCE);
  const nameOf = useMethodNames();
  return (
    <>
      <h1>Your submissions</h1>
      <Loading of={loaded} />
      {loaded.answer?.open.map(({ id, submission, specimens, question }) => (
        <section key={id}>
          <h2>{submission}: a question</h2>
          <p>
            {specimens.length > 0 && `Specimens ${specimens.join(', ')}. `}
            {question}
          </p>
          <Form
            schema={answerRequest}
            submit="Answer"
            fields={[{ name: 'answer', label: 'Your answer', kind: 'words' }]}
            onSend={async (request) => {
              await ask(queryResponse, 'POST', `queries/${id}/answer`, { body: request });
              loaded.again();
              return 'Answered.';
            }}
          />
          <p>
            <a href={`/desk/enter/?draft=${submission}`}>Look at the readings and hand in again</a>
          </p>
        </section>
      ))}
      {loaded.answer?.list.length === 0 && (
        <p>
          You have handed in nothing yet. <a href="/desk/bench/">Begin a bench day</a>
        </p>
      )}
      <ul class="rows">
        {loaded.answer?.list.slice(0, shown).map(({ reference, spool, method, benchDay, state, revision, version }) => (
          <li key={reference}>
            <p>
              <span class="code">{spool}</span> {nameOf(method.slug)}, {dayOf(benchDay)}
              <br />
              <span class="soft">
                {reference}
                {revision > 1 && `, revision ${revision}`}
              </span>
            </p>
            <span>{STATES[state]}</span>
            {state === 'draft' && <TakeAway reference={reference} version={version} onGone={loaded.again} />}
            {(state === 'submitted' || state === 'returned') && (
              <Beside
                reference={reference}
                accountId={account.id}
                canAdd={state === 'submitted'}
                isWaiting={loaded.answer?.waiting.has(reference) ?? false}
              >
                <TakeBack reference={reference} version={version} onBack={loaded.again} />
              </Beside>
            )}
            {(state === 'draft' || state === 'returned') && <a href={`/desk/enter/?draft=${reference}`}>Go on</a>}
          </li>
        ))}
      </ul>
      {loaded.answer && loaded.answer.list.length > shown && (
        <button type="button" onClick={() => setShown(shown + AT_ONCE)}>
          Earlier ones
        </button>
      )}
    </>
  );
}

interface BesideProps {
  readonly reference: string;
  readonly accountId: string;
  readonly canAdd: boolean;
  /** Whether a record for it waits on this device: it is sent as soon as this is open. */
  readonly isWaiting: boolean;
  readonly children: ComponentChildren;
}

/** Photos and records of pulls that come later than the readings, and the way back. */
function Beside({ reference, accountId, canAdd, isWaiting, children }: BesideProps) {
  const [isOpen, setIsOpen] = useState(isWaiting);
  return (
    <details class="whole" open={isOpen} onToggle={(event) => setIsOpen(event.currentTarget.open)}>
      <summary>
        Photos, records, take back<span class="only-heard">: {reference}</span>
      </summary>
      {isOpen && <Photos of={`submissions/${reference}`} first="break" canAdd />}
      {isOpen && canAdd && <RecordsToSend reference={reference} accountId={accountId} copyId={null} />}
      {isOpen && children}
    </details>
  );
}

/** It stays on record as taken back; a reviewer who has begun is not interrupted. */
function TakeBack({ reference, version, onBack }: { reference: string; version: number; onBack: () => void }) {
  const { said, act } = useAct(onBack);
  return (
    <span>
      <button
        type="button"
        onClick={() => act(() => ask(submissionResponse, 'POST', `submissions/${reference}/taking-back`, { version }), '')}
      >
        Take {reference} back
      </button>
      {said !== '' && <span role="alert"> {said}</span>}
    </span>
  );
}

/** Two presses: the second names what is gone then. */
function TakeAway({ reference, version, onGone }: { reference: string; version: number; onGone: () => void }) {
  const [isAsked, setIsAsked] = useState(false);
  const [fault, setFault] = useState('');
  const press = () => {
    if (!isAsked) {
      setIsAsked(true);
      return;
    }
    ask(z.null(), 'DELETE', `drafts/${reference}`, { version }).then(onGone, (error: unknown) => setFault(failureWords(error)));
  };
  return (
    <span>
      <button type="button" onClick={press} onBlur={() => setIsAsked(false)}>
        {isAsked ? `Yes, ${reference} and its readings go for good` : `Take ${reference} away`}
      </button>
      {fault !== '' && <span role="alert"> {fault}</span>}
    </span>
  );
}
