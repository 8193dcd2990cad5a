import type { SpecimenInSi } from '../submissions/readings-si.js';
import type { CheckedTrace } from './check-input.js';
import type { Finding } from './finding.js';
import { tracePeak } from './list/trace-peak.js';
import { peaksApart } from './peaks-apart.js';

/** What traces tell that came after their submission was checked. */
export function checkTraces(specimens: readonly SpecimenInSi[], traces: readonly CheckedTrace[]): Finding[] {
  const { code, severity, isSealed = false } = tracePeak;
  return peaksApart(specimens, traces).map((observation) => ({ code, severity, isSealed, ...observation }));
}
