import { observe } from '../check.js';
import type { Check } from '../check.js';

export const gripBreaks: Check = {
  code: 'specimens/grip-breaks',
  title: 'Too many breaks at the grip',
  severity: 'held',
  mayBe: ['blocks', 'held', 'note'],
  looksAt: ['figures', 'method', 'specimens'],
  explains: 'A break at the grip tells of the grip, not of the line. Many of them mean that the others may be weakened by it too.',
  limit: 'The method version states the largest share.',
  source: 'common practice',
  example: 'Three of eight specimens parted at the grip.',
  run({ figures, specimens, method }) {
    const limit = method.limits.gripBreakSharePercent;
    const share = figures.gripBreakSharePercent;
    if (share <= limit) return [];
    const broken = specimens.filter(({ reason }) => reason === 'brokeAtGrip').map(({ number }) => number);
    return [
      observe(`${share.toFixed(0)} % of the specimens broke at the grip; the method allows ${limit} %.`, {
        actual: `${share.toFixed(1)} %`,
        expected: `at most ${limit} %`,
        specimens: broken,
      }),
    ];
  },
};
