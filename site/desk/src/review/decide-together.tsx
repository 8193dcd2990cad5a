import { useState } from 'preact/hooks';
import { submissionResponse } from '../../../../api/contract/endpoints/submissions.js';
import type { SubmissionResponse } from '../../../../api/contract/endpoints/submissions.js';
import { ask } from '../http/ask.js';
import { newKey } from '../http/new-key.js';
import { findingKind } from '../words/finding-kind.js';
import { dayOf } from '../words/day-of.js';
import { failureWords } from '../words/failure-words.js';

interface Props {
  readonly submissions: readonly SubmissionResponse[];
  /** Whether they wait for their review, or were accepted and are in doubt. */
  readonly are: 'waiting' | 'inDoubt';
  readonly onDecided: () => void;
  /** What a method is called. */
  readonly nameOf: (slug: string) => string;
}

const heldOf = ({ findings }: SubmissionResponse) =>
  findings.filter(({ severity, resolution, id }) => severity === 'held' && resolution === null && id !== null);
const kindOf = (submission: SubmissionResponse): string =>
  [...new Set(heldOf(submission).map(({ code }) => findingKind(code)))].sort().join(', ');

/** Equal cases: submissions with the same kinds of findings, looked at one by one and decided with one reason. */
export function DecideTogether({ submissions, are, onDecided, nameOf }: Props) {
  const groups = [...Map.groupBy(submissions, kindOf)].filter(([, cases]) => cases.length > 1);
  const [told, setTold] = useState<readonly string[]>([]);
  if (groups.length + told.length === 0) return null;
  return (
    <section>
      <h2>Equal cases</h2>
      <p>The same was found on each of a group. Tick those that you have looked at; one reason stands under all of them.</p>
      {groups.map(([kind, cases]) => (
        <Group key={kind} {...{ kind, cases, are, onDecided, nameOf }} onTell={setTold} />
      ))}
      <div role="status">
        <ul class="plain">
          {told.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </div>
    </section>
  );
}

interface GroupProps extends Omit<Props, 'submissions'> {
  readonly kind: string;
  readonly cases: readonly SubmissionResponse[];
  /** Says what became of each; it stays when the group is gone. */
  readonly onTell: (lines: readonly string[]) => void;
}

function Group({ kind, cases, are, onDecided, nameOf, onTell }: GroupProps) {
  const [ticked, setTicked] = useState<readonly string[]>([]);
  const [words, setWords] = useState('');
  const [isAtWork, setIsAtWork] = useState(false);
  const isWanting = ticked.length === 0 || (kind !== '' && words.trim() === '');
  const decide = async () => {
    setIsAtWork(true);
    const told: string[] = [];
    for (const [index, one] of cases.filter(({ reference }) => ticked.includes(reference)).entries()) {
      const said = await carryOut(one, are, words.trim()).catch((error: unknown) => `not decided: ${failureWords(error)}`);
      told.push(`${index + 1} of ${ticked.length}, ${one.reference}: ${said}`);
      onTell([...told]);
    }
    setIsAtWork(false);
    setTicked([]);
    onDecided();
  };
  return (
    <details>
      <summary>
        {cases.length} × {kind === '' ? 'nothing to answer' : kind}
      </summary>
      <p class="acts">
        <button type="button" onClick={() => setTicked(ticked.length === cases.length ? [] : cases.map(({ reference }) => reference))}>
          {ticked.length === cases.length ? 'Tick none' : `Tick all ${cases.length}`}
        </button>
      </p>
      <ul class="rows">
        {cases.map((one) => (
          <Case
            key={one.reference}
            submission={one}
            nameOf={nameOf}
            isTicked={ticked.includes(one.reference)}
            onTick={(isTicked) => setTicked(isTicked ? [...ticked, one.reference] : ticked.filter((other) => other !== one.reference))}
          />
        ))}
      </ul>
      {kind !== '' && (
        <label class="field">
          Why they stand all the same
          <textarea rows={2} value={words} onInput={(event) => setWords(event.currentTarget.value)} />
        </label>
      )}
      <p class="acts">
        <button type="button" class="main" aria-disabled={isWanting || isAtWork} onClick={() => !isWanting && !isAtWork && void decide()}>
          {are === 'waiting' ? `Accept ${ticked.length}` : `Answer ${ticked.length}`} with this reason
        </button>
      </p>
    </details>
  );
}

interface CaseProps extends Pick<Props, 'nameOf'> {
  readonly submission: SubmissionResponse;
  readonly isTicked: boolean;
  readonly onTick: (isTicked: boolean) => void;
}

function Case({ submission, isTicked, onTick, nameOf }: CaseProps) {
  const { reference, spool, method, tester, benchDay, specimens } = submission;
  const counted = specimens.filter(({ state }) => state === 'valid').length;
  return (
    <li>
      <div>
        <label class="tick">
          <input type="checkbox" checked={isTicked} onChange={(event) => onTick(event.currentTarget.checked)} />
          <span>
            <span class="code">{spool}</span> {nameOf(method.slug)}, {tester}, {dayOf(benchDay)}, {counted} of {specimens.length} count
          </span>
        </label>
        {heldOf(submission).map(({ id, message }) => (
          <p key={id} class="soft small">
            {message}
          </p>
        ))}
      </div>
      <a href={`/desk/review-one/?reference=${reference}`}>
        Look<span class="only-heard"> at {reference}</span>
      </a>
    </li>
  );
}

/** Each on its own, at the version that was looked at: where somebody was there meanwhile, that one is left. */
async function carryOut(submission: SubmissionResponse, are: Props['are'], words: string): Promise<string> {
  const { reference, version } = submission;
  const held = heldOf(submission);
  if (are === 'waiting') {
    const body = { decision: 'accepted', setAside: [], resolutions: held.map(({ id }) => ({ finding: id, words })) };
    await ask(submissionResponse, 'POST', `submissions/${reference}/reviews`, { body, version, key: newKey() });
    return 'accepted';
  }
  let seen = version;
  for (const { id } of held)
    ({ version: seen } = await ask(submissionResponse, 'POST', `submissions/${reference}/findings/${id ?? ''}/resolution`, {
      body: { words },
      version: seen,
    }));
  return 'answered';
}
