import { earlierFrom, RETOLD } from '../../api/reckoning/documents/retold.js';
import type { Retold } from '../../api/reckoning/documents/retold.js';
import type { Bundle } from '../../api/reckoning/documents/bundle.js';
import type { ReleaseFile } from '../../api/reckoning/release-files.js';
import type { EarlierEdition } from '../../api/reckoning/release-inputs.js';

/** What a release tells a later one, from its files. */
export function earlierEdition(files: readonly ReleaseFile[], digest: string, age = 0): EarlierEdition {
  const read = (name: string): unknown => JSON.parse(files.find(({ path }) => path === name)!.content);
  const { evidence, revision } = (read('bundle.json') as Bundle).inputs;
  return earlierFrom(read(RETOLD) as Retold, { edition: evidence.edition.slug, revision, digest }, age);
}
