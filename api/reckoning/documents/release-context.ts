import { certaintyOf } from '../standings/certainty.js';
import type { Certainty } from '../standings/certainty.js';
import { computeEdition } from '../standings/compute-edition.js';
import type { ComputedEdition } from '../standings/compute-edition.js';
import { sha256 } from '../../platform/identifiers/identifiers.js';
import { FORMAT_VERSION } from '../../contract/documents/release-documents.js';
import type { VariantName } from '../../contract/documents/release-documents.js';
import { canonicalJson } from '../canonical-json.js';
import type { ReleaseInputs } from '../release-inputs.js';

/** The inputs of a release with what follows from them. */
export interface ReleaseContext extends ReleaseInputs {
  readonly computed: ComputedEdition;
  readonly certainty: Certainty;
}

/** Computes results, standings and certainty. */
export function contextOf(inputs: ReleaseInputs): ReleaseContext {
  const computed = computeEdition(inputs.evidence);
  return { ...inputs, computed, certainty: certaintyOf(computed, sha256(canonicalJson(seededBy(inputs)))) };
}

/** What the draws are seeded by: every counted reading by its submission, and the scheme. Nobody can choose it without changing a reading. */
const seededBy = ({ evidence: { edition, submissions } }: ReleaseInputs) => ({
  edition: edition.slug,
  scheme: edition.scheme.rules,
  submissions: submissions.map(({ reference, specimens }) => ({
    reference,
    specimens: specimens.map(({ trace: _, ...specimen }) => specimen),
  })),
});

/** Heading that every document carries. */
export const headingOf = ({ house, isDemo, revision, publishedAt, evidence: { edition } }: ReleaseInputs) => ({
  formatVersion: FORMAT_VERSION as typeof FORMAT_VERSION,
  house,
  isDemo,
  edition: { slug: edition.slug, name: edition.name, openedOn: edition.opensOn, closedOn: edition.closedOn ?? edition.closesOn },
  revision,
  publishedAt,
});

/** Name of a variant of the edition. */
export function nameOf({ variants }: ReleaseInputs, slug: string): VariantName {
  const name = variants.find((variant) => variant.slug === slug);
  if (!name) throw new Error(`A release names a variant that is not among its inputs: ${slug}`);
  return name;
}
