import { pairedReproducibility } from '../../measurement/agreement/paired-reproducibility.js';
import { roundHalfEven } from '../../measurement/units/round-half-even.js';
import type { RetestsDocument } from '../../contract/documents/retests-document.js';
import { figuresOfEvidence } from '../evidence/submission-evidence.js';
import type { SubmissionEvidence } from '../evidence/submission-evidence.js';
import type { ReleaseInputs } from '../release-inputs.js';
import { headingOf } from './release-context.js';

interface Pair {
  readonly original: string;
  readonly again: SubmissionEvidence | null;
  readonly found: { readonly submission: SubmissionEvidence; readonly first: Found; readonly second: Found } | null;
}

interface Found {
  readonly value: number;
  readonly unit: 'N' | '%';
}

/** What was drawn to be tested again, what was found, and the reproducibility that follows. */
export function retestsDocument(inputs: ReleaseInputs): RetestsDocument {
  const { retests, submissions } = inputs.evidence;
  const pairs = (retests?.drawn ?? []).map(({ original, again }) => pairOf(original, again, submissions));
  return {
    ...headingOf(inputs),
    draw: retests ? { seed: retests.seed, percent: retests.percent, from: [...retests.from], drawnOn: retests.drawnOn } : null,
    pairs: pairs.map(({ original, again, found }) => ({
      original,
      again: again?.reference ?? null,
      variant: found?.submission.variant ?? null,
      method: found?.submission.method.slug ?? null,
      first: found ? roundHalfEven(found.first.value, 1) : null,
      second: found ? roundHalfEven(found.second.value, 1) : null,
      unit: found?.first.unit ?? null,
      differencePercent: found ? roundHalfEven(100 * (found.second.value / found.first.value - 1), 1) : null,
    })),
    reproducibility: [
      ...Map.groupBy(
        pairs.flatMap(({ found }) => found ?? []),
        ({ submission }) => submission.method.slug,
      ),
    ].map(([method, own]) => {
      const {
        relativeSd,
        low95,
        high95,
        pairs: count,
      } = pairedReproducibility(own.map(({ first, second }) => [first.value, second.value] as const));
      const [relativePercent, low, high] = [relativeSd, low95, high95].map((one) => roundHalfEven(100 * one, 1)) as [
        string,
        string,
        string,
      ];
      return { method, pairs: count, relativePercent, low, high };
    }),
  };
}

function pairOf(original: string, again: SubmissionEvidence | null, submissions: readonly SubmissionEvidence[]): Pair {
  const submission = submissions.find(({ reference }) => reference === original);
  const [first, second] = [submission && foundIn(submission), again && foundIn(again)];
  return { original, again, found: submission && first && second ? { submission, first, second } : null };
}

/** What a submission was made for: the share kept where there is one, else the mean force. */
function foundIn(submission: SubmissionEvidence): Found | null {
  const { retentionPercent, breakingForceN } = figuresOfEvidence(submission);
  if (retentionPercent) return { value: retentionPercent.value, unit: '%' };
  return breakingForceN ? { value: breakingForceN.mean, unit: 'N' } : null;
}
