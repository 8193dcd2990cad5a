import type { RoundRobinsDocument } from '../../../api/contract/documents/round-robins-document.js';
import { reportOf } from '../../../api/reckoning/rigs/round-robin-report.js';

const FORCES_N = [
  ['88.1', '90.3', '87.4'],
  ['89.0', '88.2', '90.9'],
  ['97.8', '98.4', '97.1'],
  ['88.8', '87.9', '89.6'],
  ['90.2', '88.7', '89.1'],
  ['87.9', '89.4', '88.3'],
];

/** One round robin on one rig, in which a tester stands apart. */
export const inventedRoundRobins = (): RoundRobinsDocument['items'] => [
  reportOf({
    slug: 'spring',
    name: 'Spring round',
    words: 'How far do testers differ on one rig?',
    method: 'straight-pull',
    levels: ['K7M2QAB'],
    specimens: 3,
    state: 'closed',
    closedOn: '2026-01-22',
    testers: FORCES_N.length,
    cells: FORCES_N.map((forces, index) => ({
      tester: index + 1,
      level: 'K7M2QAB',
      instrument: 'R1',
      readings: forces.map((text) => ({ text, unit: 'N', valueN: text })),
    })),
  }),
];
