import { useState } from 'preact/hooks';
import { z } from 'zod';
import type { MethodVersion } from '../../../../api/contract/endpoints/methods.js';
import { CLAIM_HOURS, possibleActionsResponse, queueResponse } from '../../../../api/contract/endpoints/reviews.js';
import { submissionResponse } from '../../../../api/contract/endpoints/submissions.js';
import type { SubmissionResponse } from '../../../../api/contract/endpoints/submissions.js';
import { ask } from '../http/ask.js';
import { newKey } from '../http/new-key.js';
import { Refusal } from '../http/problem.js';
import { dayOf } from '../words/day-of.js';
import { METHOD_HELP, MethodHelp } from '../parts/method-help.js';
import { useKept } from '../parts/on-device.js';
import { failureWords } from '../words/failure-words.js';
import { AfterDecision } from './after-decision.js';
import { Decision, NOTHING_WRITTEN } from './decision.js';
import type { Written } from './decision.js';
import { FindingAnswers } from './finding-answers.js';
import { FirstJudgement } from './first-judgement.js';
import { Photographed } from './photographed.js';
import { RevisionChanges } from './revision-changes.js';
import { RigOfTheDay } from './rig-of-the-day.js';
import { SpecimenPlot } from './specimen-plot.js';
import { SpecimensTable } from './specimens-table.js';
import { StateBanner } from './state-banner.js';
import { focusNext, toggle, useKeys } from './use-keys.js';

interface Props {
  readonly submission: SubmissionResponse;
  readonly method: MethodVersion;
  readonly actions: z.infer<typeof possibleActionsResponse>['items'];
  /** An editor looks, and closes what will not come back. */
  readonly isReviewer: boolean;
  readonly onMoved: () => void;
}

export function ReviewSheet({ submission, method, actions, isReviewer, onMoved }: Props) {
  const { reference, version, spool, specimens, findings } = submission;
  const [written, setWritten] = useKept<Written>(`review ${reference} ${submission.revision}`, NOTHING_WRITTEN);
  const { answers, setAside } = written;
  const write = (change: Partial<Written>) => setWritten({ ...written, ...change });
  const [fault, setFault] = useState('');
  const [isClaimed, setIsClaimed] = useState(false);
  const [hasMoved, setHasMoved] = useState(false);
  const deciding = actions.find(({ action }) => action === 'decide');
  const canDecide = deciding?.isPossible === true;
  const isOpen = submission.state === 'submitted';

  const fail = (error: unknown) => {
    const isStale = error instanceof Refusal && (error.status === 412 || error.code === 'reviews/wrong-state');
    setHasMoved(isStale);
    setFault(
      isStale ? 'Somebody else was here meanwhile. What you wrote stays on this page; nothing was decided by you.' : failureWords(error),
    );
    if (isStale) onMoved();
  };
  const act = (send: () => Promise<unknown>) => {
    setFault('');
    send().then(onMoved, fail);
  };
  const decide = (body: object) =>
    act(async () => {
      await ask(submissionResponse, 'POST', `submissions/${reference}/reviews`, { body, version, key: newKey() });
      setWritten(null);
    });
  const claim = () =>
    act(async () => {
      await ask(possibleActionsResponse, 'POST', `submissions/${reference}/claim`, { version });
      setIsClaimed(true);
    });
  const giveBack = () =>
    act(async () => {
      await ask(z.null(), 'DELETE', `submissions/${reference}/claim`, { version });
      setIsClaimed(false);
    });
  const next = () =>
    void ask(queueResponse, 'GET', 'review-queue?limit=20').then(({ items }) => {
      const following = items.find((one) => one.reference !== reference);
      window.location.assign(following ? `/desk/review-one/?reference=${following.reference}` : '/desk/review/');
    });
  useKeys(isReviewer ? { n: next, c: claim, s: () => focusNext('.set-aside'), h: () => toggle(METHOD_HELP) } : {});

  return (
    <>
      <h1>
        <span class="code">{spool}</span> {method.name}
      </h1>
      <Heading submission={submission} />
      {(hasMoved || !isOpen) && <StateBanner submission={submission} />}
      {fault !== '' && (
        <p role="alert" class="signal">
          {fault}
        </p>
      )}
      {isReviewer && isOpen && deciding?.why !== null && deciding?.why !== undefined && !canDecide && <p class="signal">{deciding.why}</p>}
      {isReviewer && <Queueing {...{ isOpen, canDecide, isClaimed, claim, giveBack, next }} />}
      <MethodHelp method={method} />
      {submission.revision > 1 && <RevisionChanges submission={submission} />}
      <h2>What the checks found</h2>
      <FindingAnswers
        {...{ findings, method, answers, canDecide }}
        onAnswer={(finding, words) => write({ answers: { ...answers, [finding]: words } })}
      />
      <h2>Specimens</h2>
      <SpecimenPlot specimens={specimens} limits={method.limits} />
      <SpecimensTable
        {...{ specimens, setAside, canDecide }}
        onSetAside={(number, reason) => {
          const others = Object.entries(setAside).filter(([one]) => Number(one) !== number);
          write({ setAside: Object.fromEntries(reason === null ? others : [...others, [number, reason]]) });
        }}
      />
      <Photographed submission={submission} />
      <RigOfTheDay submission={submission} />
      <AfterDecision submission={submission} onMoved={onMoved} />
      {isReviewer && <h2>First judgement, then earlier results</h2>}
      {isReviewer && <FirstJudgement {...{ submission, canDecide }} onJudged={onMoved} onFault={fail} />}
      {canDecide && (
        <Decision {...{ findings, written }} numbers={specimens.map(({ number }) => number)} onWrite={write} onDecide={decide} />
      )}
    </>
  );
}

interface QueueingProps {
  readonly isOpen: boolean;
  readonly canDecide: boolean;
  readonly isClaimed: boolean;
  readonly claim: () => void;
  readonly giveBack: () => void;
  readonly next: () => void;
}

function Queueing({ isOpen, canDecide, isClaimed, claim, giveBack, next }: QueueingProps) {
  return (
    <>
      <p class="soft keys">
        Keys while you are not typing: <kbd>c</kbd> claim, <kbd>a</kbd> accept, <kbd>r</kbd> return, <kbd>f</kbd> refuse, <kbd>s</kbd> to
        the next specimen to set aside, <kbd>n</kbd> next, <kbd>h</kbd> help
      </p>
      <p class="acts">
        {isOpen && (
          <button type="button" aria-disabled={!canDecide} onClick={claim}>
            Claim for {CLAIM_HOURS} hours
          </button>
        )}
        {isOpen && isClaimed && (
          <button type="button" onClick={giveBack}>
            Give the claim back
          </button>
        )}
        <button type="button" onClick={next}>
          Next in the queue
        </button>
      </p>
    </>
  );
}

function Heading({ submission }: { submission: SubmissionResponse }) {
  const { reference, revision, tester, benchDay, instruments, temperature, humidityPercent, hasSeenLabel, note } = submission;
  const terms = {
    Reference: revision > 1 ? `${reference}, revision ${revision}` : reference,
    Tester: tester,
    Day: dayOf(benchDay),
    Instruments: instruments.map(({ code, certificate }) => `${code} (${certificate ?? 'no certificate'})`).join(', '),
    Air: `${temperature?.text ?? '–'} ${temperature?.unit ?? ''}, ${humidityPercent ?? '–'} %`,
    ...(hasSeenLabel === true && { Label: 'seen by the tester' }),
    ...(note !== null && { Note: note }),
  };
  return (
    <dl class="context">
      {Object.entries(terms).map(([term, value]) => (
        <div key={term}>
          <dt>{term}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
