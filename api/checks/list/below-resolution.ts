import type { Check } from '../check.js';
import { readingsAgainst } from '../readings-against.js';

export const belowResolution: Check = {
  code: 'readings/below-resolution',
  title: 'Reading below the resolution of the instrument',
  severity: 'held',
  looksAt: ['instruments', 'specimens'],
  explains: 'A reading smaller than the smallest step that the instrument shows was not read on it.',
  limit: 'The finest resolution among the instruments used for that kind of reading.',
  source: 'common practice',
  example: '0.001 g on a balance with steps of 0.01 g.',
  run: (input) =>
    readingsAgainst(input, {
      words: 'below the resolution',
      limitSi: (instruments) => Math.min(...instruments.map(({ resolutionSi }) => Number(resolutionSi))),
      isAgainst: (value, resolution) => value < resolution,
    }),
};
