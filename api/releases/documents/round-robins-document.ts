import type { RoundRobinsDocument } from '../../public-api/round-robins-document.schemas.js';
import { reportOf } from '../../round-robins/report-of.js';
import type { ReleaseInputs } from '../release-inputs.js';
import { headingOf } from './release-context.js';

/** Reports of the round robins that were closed while the edition was worked on; testers by number. */
export const roundRobinsDocument = (inputs: ReleaseInputs): RoundRobinsDocument => ({
  ...headingOf(inputs),
  items: (inputs.evidence.roundRobins ?? []).map(reportOf),
});
