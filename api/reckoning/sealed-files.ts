import { citationFiles } from './citation/citation-files.js';
import { archiveOf } from './release-archive.js';
import type { ReleaseFile, SealedFile } from './release-files.js';
import type { ReleaseInputs } from './release-inputs.js';

/** Everything that a manifest lists: what was computed, what tells how to cite it, the program that verifies it, and all of them in one archive. Pure. */
export function sealedFiles(inputs: ReleaseInputs, computed: readonly ReleaseFile[], script: ReleaseFile): SealedFile[] {
  const files = [...computed, ...citationFiles(inputs, computed), script];
  return [...files, archiveOf(files)];
}
