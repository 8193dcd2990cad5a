import type { ComparedEvidence } from '../../api/reckoning/evidence/edition-evidence.js';
import type { ReleaseInputs } from '../../api/reckoning/release-inputs.js';

/** The same entries in the order of their slugs, so many to a division; as they are where one takes all. */
export function inDivisionsOf(entries: number, inputs: ReleaseInputs & { readonly evidence: ComparedEvidence }): ReleaseInputs {
  const { scheme, ...edition } = inputs.evidence.edition;
  const slugs = inputs.variants.map(({ slug }) => slug);
  const divisions = Array.from({ length: Math.ceil(slugs.length / entries) }, (_, i) => ({
    slug: `division-${i + 1}`,
    name: `Division ${i + 1}`,
    takes: { materials: [], constructions: [] },
    scheme,
    variants: slugs.slice(i * entries, (i + 1) * entries),
    overruled: [],
  }));
  return divisions.length < 2 ? inputs : { ...inputs, evidence: { ...inputs.evidence, edition: { ...edition, divisions } } };
}
