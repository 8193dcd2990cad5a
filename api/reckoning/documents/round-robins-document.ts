import type { RoundRobinsDocument } from '../../contract/documents/round-robins-document.js';
import { reportOf } from '../rigs/round-robin-report.js';
import type { ReleaseInputs } from '../release-inputs.js';
import { headingOf } from './release-context.js';

/** Reports of the round robins that were closed while the edition was worked on; testers by number. */
export const roundRobinsDocument = (inputs: ReleaseInputs): RoundRobinsDocument => ({
  ...headingOf(inputs),
  items: (inputs.evidence.roundRobins ?? []).map(reportOf),
});
