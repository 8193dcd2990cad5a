import { whatTells } from '../contract/blind-question.js';
import type { InputFault } from '../platform/errors/problem.js';
import { notValid } from '../platform/http/validation.js';
import type { SubmissionUnderReview } from './submission-under-review.js';

/** A query names the specimens to look at, never how far off they are: a question with a quantity in it would tell. */
export function requireBlindQuestion(
  query: { specimens: readonly number[]; question: string },
  specimens: SubmissionUnderReview['specimens'],
): void {
  const numbers = new Set(specimens.map((specimen) => specimen.number));
  const faults: InputFault[] = query.specimens.flatMap((number, index) =>
    numbers.has(number)
      ? []
      : [
          {
            pointer: `/query/specimens/${index}`,
            code: 'unknown_specimen',
            detail: `No specimen has the number ${number}; name specimens of this submission.`,
          },
        ],
  );
  const told = whatTells(query.question);
  if (told !== null) {
    const detail = `The question holds a size or a direction ("${told}"). Name the specimens to look at, never how far off they are or in which direction.`;
    faults.push({ pointer: '/query/question', code: 'question_tells_figures', detail });
  }
  if (faults.length > 0) throw notValid(faults);
}
