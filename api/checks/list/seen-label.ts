import { observe } from '../check.js';
import type { Check } from '../check.js';

export const seenLabel: Check = {
  code: 'tester/seen-label',
  title: 'Tester has seen the label',
  severity: 'held',
  explains: 'Blind testing needs a tester who does not know the line.',
  limit: 'The label was not seen.',
  run({ content }) {
    if (!content.seenLabel) return [];
    return [observe('The tester has seen the unblinded label.', { actual: 'seen', expected: 'not seen', pointer: '/seenLabel' })];
  },
};
