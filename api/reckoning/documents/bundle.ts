import type { Tail } from '../../measurement/bench-model/tail.js';
import type { CategoryDocument, EditionDocument } from '../../contract/documents/release-documents.js';
import type { ReleaseInputs } from '../release-inputs.js';
import { twelveDigits } from './twelve-digits.js';
import type { PublishedResult } from './published-result.js';
import { headingOf } from './release-context.js';
import type { EditionContext } from './release-context.js';

/** The bundle: every input and every output of the edition in one canonical document. */
export interface Bundle extends ReturnType<typeof headingOf> {
  readonly inputs: ReleaseInputs;
  readonly outputs: { readonly results: readonly PublishedResult[] } & (Tables | { readonly divisions: readonly Tables[] });
}

/** The tables of what is compared: of an edition with one division, or of one of several. */
export interface Tables {
  readonly edition: EditionDocument;
  readonly categories: readonly CategoryDocument[];
}

/** The tables in a bundle, one a division. */
export const tablesIn = (outputs: Bundle['outputs']): readonly Tables[] => ('divisions' in outputs ? outputs.divisions : [outputs]);

export function bundleOf(inputs: ReleaseInputs, context: EditionContext, divisions: readonly Tables[]): Bundle {
  const results = publishedResults(context);
  const [only] = divisions;
  return {
    ...headingOf(inputs),
    inputs,
    outputs: inputs.evidence.edition.divisions || !only ? { results, divisions } : { results, ...only },
  };
}

const freedomOf = ({ degreesOfFreedom }: { readonly degreesOfFreedom: number }): string => twelveDigits(Math.min(1e6, degreesOfFreedom));

const tailOf = (tail: Tail | undefined): PublishedResult['besideTable'] =>
  tail ? { standardUncertainty: twelveDigits(tail.standardUncertainty), degreesOfFreedom: freedomOf(tail) } : null;

/** Results with their uncertainty, by variant and quantity. */
function publishedResults({ computed: { edition, results, besideTable } }: EditionContext): PublishedResult[] {
  return edition.entries.flatMap(({ variant }) =>
    [...(results.get(variant) ?? [])].map(([quantity, { estimate }]) => ({
      variant,
      quantity,
      value: twelveDigits(estimate.value),
      standardUncertainty: estimate.standardUncertainty === null ? null : twelveDigits(estimate.standardUncertainty),
      degreesOfFreedom: estimate.standardUncertainty === null ? null : freedomOf(estimate),
      besideTable: tailOf(besideTable.get(quantity)?.get(variant)),
    })),
  );
}
