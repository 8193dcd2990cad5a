import type { MethodVersion } from '../../../../api/contract/endpoints/methods.js';
import type { SubmissionResponse } from '../../../../api/contract/endpoints/submissions.js';
import { FindingHelp } from '../parts/method-help.js';
import { findingKind } from '../words/finding-kind.js';

interface Props {
  readonly findings: SubmissionResponse['findings'];
  readonly method: Pick<MethodVersion, 'slug' | 'number'>;
  readonly answers: Readonly<Record<string, string>>;
  readonly onAnswer: (finding: string, words: string) => void;
  readonly canDecide: boolean;
}

/** Each finding with what was seen, its limit, and room for the answer that lets the submission stand. */
export function FindingAnswers({ findings, method, answers, onAnswer, canDecide }: Props) {
  if (findings.length === 0) return <p>The checks found nothing.</p>;
  return (
    <ul class="rows">
      {findings.map(({ id, code, severity, message, resolution }) => (
        <li key={id ?? code}>
          <p>
            <strong class={severity === 'note' ? '' : 'signal'}>{severity === 'held' ? 'To answer' : 'Note'}</strong>{' '}
            <span class="soft">{findingKind(code)}</span>
            <br />
            {message}
            <FindingHelp code={code} method={method} />
            {resolution !== null && (
              <>
                <br />
                <span class="soft">Answered: {resolution}</span>
              </>
            )}
          </p>
          {severity === 'held' && resolution === null && id !== null && canDecide && (
            <label class="field answer">
              Why it stands all the same
              <textarea rows={2} value={answers[id] ?? ''} onInput={(event) => onAnswer(id, event.currentTarget.value)} />
            </label>
          )}
        </li>
      ))}
    </ul>
  );
}
