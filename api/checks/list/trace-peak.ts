import type { CheckInput } from '../check-input.js';
import { observe } from '../check.js';
import type { Check, Observation } from '../check.js';

export const tracePeak = {
  code: 'trace/peak-differs',
  title: 'Trace and reading disagree',
  severity: 'held',
  looksAt: ['specimens', 'traces'],
  explains:
    'The highest force of a trace is not the breaking force that was entered for the specimen: another specimen, another unit, or a peak between two samples.',
  limit: 'Highest force of the trace in per cent of the reading.',
  limits: { percent: { words: 'Apart, at most', value: 1, unit: '%', atLeast: 0.1, atMost: 20 } },
  // A display is read off between two samples of the logger.
  source: 'common practice',
  example: 'A trace whose highest force is 2 % above what the display showed.',
  run: ({ specimens, traces = [] }: Pick<CheckInput, 'specimens' | 'traces'>, { percent }): Observation[] =>
    traces.flatMap(({ specimen, peakForceN }) => {
      const reading = specimens.find(({ number }) => number === specimen)?.readings.find(({ role }) => role === 'breakingForce');
      if (!reading || Math.abs(peakForceN / Number(reading.valueSi) - 1) <= percent / 100) return [];
      const message = `The highest force of the trace of specimen ${specimen} is ${peakForceN} N; the reading is ${reading.valueSi} N.`;
      return [
        observe(message, {
          actual: `${peakForceN} N`,
          expected: `${reading.valueSi} N within ${percent} %`,
          specimens: [specimen],
          forTester: `Look again at the trace and the reading of specimen ${specimen}: do they belong together?`,
        }),
      ];
    }),
} satisfies Check<'percent'>;
