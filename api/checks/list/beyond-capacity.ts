import type { Check } from '../check.js';
import { readingsAgainst } from '../readings-against.js';

export const beyondCapacity: Check = {
  code: 'readings/beyond-capacity',
  title: 'Reading beyond the capacity of the instrument',
  severity: 'blocks',
  looksAt: ['instruments', 'specimens'],
  explains: 'No instrument reads above its capacity: the unit, the reading or the instrument is wrong.',
  limit: 'The largest capacity among the instruments used for that kind of reading.',
  source: 'common practice',
  example: '620 N on a gauge that ends at 500 N.',
  run: (input) =>
    readingsAgainst(input, {
      words: 'beyond the capacity',
      limitSi: (instruments) => Math.max(...instruments.map(({ capacitySi }) => Number(capacitySi))),
      isAgainst: (value, capacity) => value > capacity,
    }),
};
