import { observe } from '../check.js';
import type { Check } from '../check.js';

const WORDS = {
  key: 'what this spool is',
  label: 'its label, which they made',
  results: 'what somebody else found of it',
  retest: 'that it is tested again',
} as const;

export const notBlind: Check = {
  code: 'tester/not-blind',
  title: 'Tester has read what the spool is',
  severity: 'held',
  mayBe: ['blocks', 'held'],
  looksAt: ['keyReadings'],
  explains:
    'In a small house one person holds several roles. Whoever has read the key of a spool, made its label, reviewed what others found of it or read that it is tested again is known to have done so: the hand-in is marked not blind, looked at by the reviewer, and published as such.',
  limit: 'Its tester has read nothing that tells what the spool is.',
  source: 'common practice of blind testing',
  example: 'An editor who put a spool on the shelf pulls it as a tester.',
  run({ keyReadings }) {
    if (keyReadings.length === 0) return [];
    const read = keyReadings.map((how) => WORDS[how]);
    return [
      observe(`Not blind: its tester has read ${read.join(', and ')}. Let somebody else test it, or it is published as not blind.`, {
        actual: keyReadings.join(', '),
        expected: 'nothing read',
        pointer: '/spool',
      }),
    ];
  },
};
