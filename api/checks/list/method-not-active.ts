import { observe } from '../check.js';
import type { Check } from '../check.js';

export const methodNotActive: Check = {
  code: 'method/not-active-on-bench-day',
  title: 'Method version not in force on the bench day',
  severity: 'blocks',
  looksAt: ['content', 'method'],
  explains: 'A submission follows the version of the method that was in force on its bench day.',
  limit: 'Effective from ≤ bench day ≤ effective until.',
  source: 'common practice',
  example: 'Version 1 ended on 31 August; the bench day is 2 September.',
  run({ method, content }) {
    const { effectiveFrom, effectiveUntil, slug, number } = method;
    const isActive = effectiveFrom <= content.benchDay && (effectiveUntil === null || content.benchDay <= effectiveUntil);
    if (isActive) return [];
    const range = `${effectiveFrom} to ${effectiveUntil ?? 'further notice'}`;
    return [
      observe(
        `Version ${number} of ${slug} is in force from ${range}; the bench day is ${content.benchDay}. Correct the date, or name the version of that day.`,
        {
          actual: content.benchDay,
          expected: range,
          pointer: '/methodVersion',
        },
      ),
    ];
  },
};
