import type { VariantDocument } from '../../api/contract/documents/release-documents.js';
import type { Bundle } from '../../api/reckoning/documents/bundle.js';
import { placesIn } from '../../api/reckoning/documents/places-in.js';
import type { ReleaseFile } from '../../api/reckoning/release-files.js';
import type { EarlierEdition } from '../../api/reckoning/release-inputs.js';

/** What a release tells a later one, from its files. */
export function earlierEdition(files: readonly ReleaseFile[], digest: string): EarlierEdition {
  const { outputs, inputs } = JSON.parse(files.find(({ path }) => path === 'bundle.json')!.content) as Bundle;
  const variants = files
    .filter(({ path }) => path.startsWith('documents/variants/'))
    .map(({ content }) => JSON.parse(content) as VariantDocument);
  return {
    edition: inputs.evidence.edition.slug,
    revision: inputs.revision,
    digest,
    ...placesIn(outputs),
    history: variants.flatMap(({ variant, history }) => history.slice(-1).map((point) => ({ variant: variant.slug, point }))),
    results: outputs.results,
  };
}
