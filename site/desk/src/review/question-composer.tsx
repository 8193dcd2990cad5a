import { whatTells } from '../../../../api/contract/blind-question.js';
import { QUESTION_KINDS } from '../../../../api/contract/decisions.js';

export interface Question {
  readonly kind: (typeof QUESTION_KINDS)[number];
  readonly specimens: readonly number[];
  readonly words: string;
}

interface Props {
  readonly question: Question;
  readonly numbers: readonly number[];
  readonly onChange: (question: Question) => void;
}

/** A question to the tester; a size or a direction in it is found before it is sent. */
export function QuestionComposer({ question, numbers, onChange }: Props) {
  const tells = whatTells(question.words);
  const tick = (number: number, isTicked: boolean) =>
    onChange({ ...question, specimens: isTicked ? [...question.specimens, number] : question.specimens.filter((one) => one !== number) });
  return (
    <>
      <label class="field">
        What it is about
        <select value={question.kind} onChange={(event) => onChange({ ...question, kind: event.currentTarget.value as Question['kind'] })}>
          {QUESTION_KINDS.map((kind) => (
            <option key={kind}>{kind}</option>
          ))}
        </select>
      </label>
      <fieldset class="field">
        <legend>Specimens to look at</legend>
        <span class="acts">
          {numbers.map((number) => (
            <label class="tick" key={number}>
              <input
                type="checkbox"
                checked={question.specimens.includes(number)}
                onChange={(event) => tick(number, event.currentTarget.checked)}
              />{' '}
              {number}
            </label>
          ))}
        </span>
      </fieldset>
      <label class="field">
        Question
        <textarea
          id="question"
          rows={3}
          value={question.words}
          aria-describedby="tells"
          onInput={(event) => onChange({ ...question, words: event.currentTarget.value })}
        />
      </label>
      <p id="tells" role="status" class="signal">
        {tells !== null &&
          `“${tells}” tells the tester how far off a reading is, or which way. Name the specimens and ask to look; leave it out.`}
      </p>
    </>
  );
}
