import type { Superseded } from '../../contract/superseded.js';
import type { EditionEvidence } from '../evidence/edition-evidence.js';

/** What was superseded under results of these variants, with those results; nothing at all where there is none. */
export function supersededIn(
  { submissions, superseded = [] }: EditionEvidence,
  variants: ReadonlySet<string>,
): { superseded?: Superseded[] } {
  const references = new Set(submissions.filter(({ variant }) => variants.has(variant)).map(({ reference }) => reference));
  const found = superseded
    .map((one) => ({ ...one, submissions: one.submissions.filter((reference) => references.has(reference)) }))
    .filter((one) => one.submissions.length > 0);
  return found.length > 0 ? { superseded: found } : {};
}
