import type { Tail } from '../../measurement/bench-model/tail.js';
import type { CategoryDocument, EditionDocument } from '../../contract/documents/release-documents.js';
import type { ReleaseInputs } from '../release-inputs.js';
import { exactDecimal } from './exact-decimal.js';
import type { PublishedResult } from './published-result.js';
import { headingOf } from './release-context.js';
import type { ReleaseContext } from './release-context.js';

/** The bundle: every input and every output of the edition in one canonical document. */
export interface Bundle extends ReturnType<typeof headingOf> {
  readonly inputs: ReleaseInputs;
  readonly outputs: {
    readonly results: readonly PublishedResult[];
    readonly edition: EditionDocument;
    readonly categories: readonly CategoryDocument[];
  };
}

export function bundleOf(
  inputs: ReleaseInputs,
  context: ReleaseContext,
  edition: EditionDocument,
  categories: readonly CategoryDocument[],
): Bundle {
  return { ...headingOf(inputs), inputs, outputs: { results: publishedResults(context), edition, categories } };
}

const freedomOf = ({ degreesOfFreedom }: { readonly degreesOfFreedom: number }): string => exactDecimal(Math.min(1e6, degreesOfFreedom));

const tailOf = (tail: Tail | undefined): PublishedResult['besideTable'] =>
  tail ? { standardUncertainty: exactDecimal(tail.standardUncertainty), degreesOfFreedom: freedomOf(tail) } : null;

/** Results with their uncertainty, by variant and quantity. */
function publishedResults({ computed: { edition, results, besideTable } }: ReleaseContext): PublishedResult[] {
  return edition.entries.flatMap(({ variant }) =>
    [...(results.get(variant) ?? [])].map(([quantity, { estimate }]) => ({
      variant,
      quantity,
      value: exactDecimal(estimate.value),
      standardUncertainty: estimate.standardUncertainty === null ? null : exactDecimal(estimate.standardUncertainty),
      degreesOfFreedom: estimate.standardUncertainty === null ? null : freedomOf(estimate),
      besideTable: tailOf(besideTable.get(quantity)?.get(variant)),
    })),
  );
}
