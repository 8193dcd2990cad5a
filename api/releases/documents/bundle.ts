import type { CategoryDocument, EditionDocument, VariantDocument } from '../../public-api/release-documents.schemas.js';
import { exactDecimal } from './exact-decimal.js';
import type { PublishedResult } from './published-result.js';
import { headingOf, nameOf } from './release-context.js';
import type { ReleaseContext } from './release-context.js';
import { publishedSubmission } from './submission-document.js';

/** Results with their uncertainty, by variant and quantity. */
export function publishedResults(context: ReleaseContext): PublishedResult[] {
  return context.computed.edition.entries.flatMap(({ variantId }) =>
    [...(context.computed.results.get(variantId) ?? [])].map(([quantity, { estimate }]) => ({
      variant: nameOf(context, variantId).slug,
      quantity,
      value: exactDecimal(estimate.value),
      standardUncertainty: estimate.standardUncertainty === null ? null : exactDecimal(estimate.standardUncertainty),
      degreesOfFreedom: estimate.standardUncertainty === null ? null : exactDecimal(Math.min(1e6, estimate.degreesOfFreedom)),
    })),
  );
}

/** The bundle: every input and every output of the edition in one canonical document. */
export function bundleOf(
  context: ReleaseContext,
  edition: EditionDocument,
  categories: readonly CategoryDocument[],
  variants: readonly VariantDocument[],
) {
  const { computed } = context;
  return {
    ...headingOf(context),
    inputs: {
      scheme: computed.edition.scheme,
      methods: computed.edition.methods.flatMap(({ id }) => context.methods.get(id) ?? []).map(({ id: _, ...version }) => version),
      blindKeyDigest: computed.edition.blindKeyDigest,
      instruments: computed.instruments.map(({ code, kind, name, capacity, resolution, calibrations }) => ({
        code,
        kind,
        name,
        capacity,
        resolution,
        calibrations,
      })),
      entries: computed.edition.entries.map(({ variantId, exclusion }) => ({
        variant: nameOf(context, variantId),
        exclusion,
        claims: computed.claims.filter((claim) => claim.variantId === variantId).map(({ variantId: _, ...claim }) => claim),
        spools: variants.find(({ variant }) => variant.slug === nameOf(context, variantId).slug)?.spools ?? [],
      })),
      submissions: computed.submissions.map((submission) => ({
        variant: nameOf(context, submission.variantId).slug,
        ...publishedSubmission(submission),
      })),
    },
    outputs: { results: publishedResults(context), edition, categories },
  };
}
