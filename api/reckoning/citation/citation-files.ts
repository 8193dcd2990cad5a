/** Files that let others cite and index a release: CITATION.cff, DataCite, RO-Crate. Pure. */
import type { NamedFile, ReleaseFile } from '../release-files.js';
import type { ReleaseInputs } from '../release-inputs.js';
import { citationFile } from './citation-file.js';
import { dataCiteFile } from './datacite-file.js';
import { roCrateFile } from './ro-crate-file.js';

/** @param files those of the release that they tell of */
export const citationFiles = (inputs: ReleaseInputs, files: readonly NamedFile[]): ReleaseFile[] => {
  const cited = [citationFile(inputs), dataCiteFile(inputs)];
  return [...cited, roCrateFile(inputs, [...files, ...cited])];
};
