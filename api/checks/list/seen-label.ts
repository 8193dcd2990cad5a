import { observe } from '../check.js';
import type { Check } from '../check.js';

export const seenLabel: Check = {
  code: 'tester/seen-label',
  title: 'Tester has seen the label',
  severity: 'held',
  mayBe: ['blocks', 'held', 'note'],
  looksAt: ['content'],
  explains: 'Blind testing needs a tester who does not know the line.',
  limit: 'The label was not seen.',
  source: 'common practice',
  example: 'The tester wound the line off its own box.',
  run({ content }) {
    if (!content.seenLabel) return [];
    return [observe('The tester has seen the unblinded label.', { actual: 'seen', expected: 'not seen', pointer: '/seenLabel' })];
  },
};
