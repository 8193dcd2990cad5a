import { applyCheck } from './apply-check.js';
import type { CheckInput, CheckSettings, PinnedChecks } from './check-input.js';
import type { Finding } from './finding.js';
import { tracePeak } from './list/trace-peak.js';

/** What traces tell that came after their submission was checked, under the same rules. */
export const checkTraces = (input: Pick<CheckInput, 'specimens' | 'traces'>, pinned: PinnedChecks, settings: CheckSettings): Finding[] =>
  applyCheck(tracePeak, pinned, settings, (limits) => tracePeak.run(input, limits));
