import type { SpecimenInSi } from '../submissions/readings-si.js';
import { observe } from './check.js';
import type { Observation } from './check.js';
import type { CheckedTrace } from './check-input.js';

/** Of the reading; a display is read off between two samples of the logger (common practice). */
export const MOST_APART_PERCENT = 1;

/** Traces whose highest force is not the breaking force that was entered. */
export function peaksApart(specimens: readonly SpecimenInSi[], traces: readonly CheckedTrace[]): Observation[] {
  return traces.flatMap(({ specimen, peakForceN }) => {
    const reading = specimens.find(({ number }) => number === specimen)?.readings.find(({ role }) => role === 'breakingForce');
    if (!reading || Math.abs(peakForceN / Number(reading.valueSi) - 1) <= MOST_APART_PERCENT / 100) return [];
    const message = `The highest force of the trace of specimen ${specimen} is ${peakForceN} N; the reading is ${reading.valueSi} N.`;
    return [
      observe(message, {
        actual: `${peakForceN} N`,
        expected: `${reading.valueSi} N within ${MOST_APART_PERCENT} %`,
        specimens: [specimen],
        forTester: `Look again at the trace and the reading of specimen ${specimen}: do they belong together?`,
      }),
    ];
  });
}
