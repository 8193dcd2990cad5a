import type { Withdrawn, WithdrawnDocument } from '../../contract/documents/release-documents.js';
import type { ReleaseInputs } from '../release-inputs.js';
import { headingOf } from './release-context.js';

/** A stone for each result that was accepted and withdrawn: why, when, and how to cite that. */
export const withdrawnOf = ({ house, revision, evidence: { edition, withdrawn } }: ReleaseInputs): Withdrawn[] =>
  withdrawn.map(({ reference, variant, method, tester, benchDay, withdrawnOn, reason }) => ({
    reference,
    variant,
    method,
    tester,
    benchDay,
    withdrawnOn,
    reason,
    citation: `${house}: submission ${reference}, withdrawn on ${withdrawnOn}. ${edition.name}, edition ${edition.slug}, revision ${revision}.`,
  }));

export const withdrawnDocument = (inputs: ReleaseInputs): WithdrawnDocument => ({ ...headingOf(inputs), items: withdrawnOf(inputs) });
