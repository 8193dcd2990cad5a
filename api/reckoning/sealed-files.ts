import { citationFiles } from './citation/citation-files.js';
import { computeInParts } from './compute-release.js';
import { inParts } from './release-files.js';
import type { FileInParts, NamedFile, ReleaseFile } from './release-files.js';
import type { ReleaseInputs } from './release-inputs.js';

/** What is computed of a release, and what tells how to cite it, one after the other. Pure. */
export function* filesOf(inputs: ReleaseInputs): Generator<FileInParts> {
  const told: NamedFile[] = [];
  for (const file of computeInParts(inputs)) {
    told.push({ path: file.path, mediaType: file.mediaType });
    yield file;
  }
  yield* citationFiles(inputs, told).map(inParts);
}

/** Everything that a manifest lists but the archive of all of it: the program that verifies it comes last. */
export function* sealedFiles(inputs: ReleaseInputs, script: ReleaseFile): Generator<FileInParts> {
  yield* filesOf(inputs);
  yield inParts(script);
}
