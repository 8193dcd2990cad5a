import { observe } from '../check.js';
import type { Check } from '../check.js';

export const manyInvalid: Check<'sharePercent'> = {
  code: 'specimens/many-invalid',
  title: 'Many specimens that do not count',
  severity: 'held',
  mayBe: ['blocks', 'held', 'note'],
  looksAt: ['specimens'],
  explains: 'What is left when many specimens slip, are mistied or damaged is a choice rather than a sample, whatever the reasons are.',
  limit: 'Invalid specimens of all that were tested, for any reason.',
  limits: { sharePercent: { words: 'Share of invalid specimens, at most', value: 40, unit: '%', atLeast: 1, atMost: 99 } },
  source: 'common practice',
  example: 'Four of eight specimens slipped.',
  run({ specimens }, { sharePercent }) {
    const invalid = specimens.filter(({ state }) => state === 'invalid').map(({ number }) => number);
    const percent = (100 * invalid.length) / specimens.length;
    if (percent <= sharePercent) return [];
    return [
      observe(`${invalid.length} of ${specimens.length} specimens do not count. Find out why, and test more.`, {
        actual: `${percent.toFixed(1)} %`,
        expected: `at most ${sharePercent} %`,
        specimens: invalid,
      }),
    ];
  },
};
