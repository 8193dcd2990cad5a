import type { Check } from '../check.js';
import { MOST_APART_PERCENT, peaksApart } from '../peaks-apart.js';

export const tracePeak: Check = {
  code: 'trace/peak-differs',
  title: 'Trace and reading disagree',
  severity: 'held',
  explains:
    'The highest force of a trace is not the breaking force that was entered for the specimen: another specimen, another unit, or a peak between two samples.',
  limit: `Highest force of the trace within ${MOST_APART_PERCENT} % of the reading.`,
  source: 'common practice',
  example: 'A trace whose highest force is 2 % above what the display showed.',
  run({ specimens, traces = [] }) {
    return peaksApart(specimens, traces);
  },
};
