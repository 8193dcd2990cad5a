import { useEffect, useRef, useState } from 'preact/hooks';
import { whatTells } from '../../../../api/contract/blind-question.js';
import type { Decision as Decided } from '../../../../api/contract/decisions.js';
import type { SubmissionResponse } from '../../../../api/contract/endpoints/submissions.js';
import { QuestionComposer } from './question-composer.js';
import type { Question } from './question-composer.js';
import { useKeys } from './use-keys.js';

/** What a reviewer writes before deciding. */
export interface Written {
  readonly answers: Readonly<Record<string, string>>;
  readonly setAside: Readonly<Record<number, string>>;
  readonly question: Question;
  readonly reason: string;
}

export const NOTHING_WRITTEN: Written = { answers: {}, setAside: {}, question: { kind: 'reading', specimens: [], words: '' }, reason: '' };

interface Props {
  readonly findings: SubmissionResponse['findings'];
  readonly written: Written;
  readonly numbers: readonly number[];
  readonly onWrite: (change: Partial<Written>) => void;
  readonly onDecide: (review: object) => void;
}

const NAMES: Readonly<Record<Decided, string>> = { accepted: 'Accept', returned: 'Return with a question', refused: 'Refuse' };
const DECIDED: readonly Decided[] = ['accepted', 'returned', 'refused'];

/** Accept, return or refuse; what is wanting stands beside the button. */
export function Decision({ findings, written: { answers, setAside, question, reason }, numbers, onWrite, onDecide }: Props) {
  const [chosen, setChosen] = useState<Decided>('accepted');
  const act = useRef<HTMLButtonElement>(null);
  const isFirst = useRef(true);
  useEffect(() => {
    if (!isFirst.current) act.current?.focus();
    isFirst.current = false;
  }, [chosen]);
  const choose = (decided: Decided) => {
    setChosen(decided);
    act.current?.focus();
  };
  useKeys({ a: () => choose('accepted'), r: () => choose('returned'), f: () => choose('refused') });

  const held = findings.filter(({ id, severity, resolution }) => id !== null && severity === 'held' && resolution === null);
  const open = held.filter(({ id }) => (answers[id ?? ''] ?? '').trim() === '');
  const unsaid = Object.values(setAside).filter((why) => why.trim() === '');
  const wanting: Readonly<Record<Decided, string>> = {
    accepted: [
      open.length > 0 && (open.length === 1 ? 'a finding wants an answer' : `${open.length} findings want an answer`),
      unsaid.length > 0 && 'setting aside wants a reason',
    ]
      .filter(Boolean)
      .join('; '),
    returned:
      question.words.trim() === ''
        ? 'the question is empty'
        : whatTells(question.words) !== null
          ? 'the question tells a size or a direction'
          : '',
    refused: reason.trim() === '' ? 'refusing wants a reason' : '',
  };
  const requests: Readonly<Record<Decided, object>> = {
    accepted: {
      decision: 'accepted',
      setAside: Object.entries(setAside).map(([specimen, why]) => ({ specimen: Number(specimen), reason: why })),
      resolutions: held.map(({ id }) => ({ finding: id, words: answers[id ?? ''] })),
    },
    returned: { decision: 'returned', query: { kind: question.kind, specimens: question.specimens, question: question.words } },
    refused: { decision: 'refused', reason },
  };
  return (
    <section>
      <h2>Decision</h2>
      <p class="acts" role="group" aria-label="Decision">
        {DECIDED.map((decided) => (
          <button type="button" key={decided} aria-pressed={chosen === decided} onClick={() => setChosen(decided)}>
            {NAMES[decided]}
          </button>
        ))}
      </p>
      {chosen === 'returned' && <QuestionComposer question={question} numbers={numbers} onChange={(next) => onWrite({ question: next })} />}
      {chosen === 'refused' && (
        <label class="field">
          Why it is refused; its tester reads this
          <textarea rows={3} value={reason} onInput={(event) => onWrite({ reason: event.currentTarget.value })} />
        </label>
      )}
      <p class="send">
        <button
          ref={act}
          type="button"
          class="main"
          aria-disabled={wanting[chosen] !== ''}
          onClick={() => wanting[chosen] === '' && onDecide(requests[chosen])}
        >
          {NAMES[chosen]} now
        </button>
        <span role="status" class="signal">
          {wanting[chosen]}
        </span>
      </p>
    </section>
  );
}
