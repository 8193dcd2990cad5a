import { FORMAT_VERSION } from '../contract/documents/release-documents.js';
import type { ReleaseFile } from './release-files.js';
import type { ReleaseInputs } from './release-inputs.js';

/** What somebody who was handed the folder of a release needs to know. */
export function readmeFile({ house, isDemo, revision, publishedAt, licence, softwareVersion, evidence }: ReleaseInputs): ReleaseFile {
  const { slug, name } = evidence.edition;
  const day = publishedAt.slice(0, 10);
  return {
    path: 'README.md',
    mediaType: 'text/markdown; charset=utf-8',
    content: `# ${house}: ${name}, revision ${revision}

Published on ${day}.${isDemo ? ' **Invented for demonstration: no maker, line, person or number in it is real.**' : ''}

## What is in this folder

- \`bundle.json\`: every input (readings as entered, methods, calibrations, scheme, names) and every output. Canonical JSON (RFC 8785); numbers that matter are decimal text.
- \`retold.json\`: what later editions tell again of this one: places, values, a line of history for each variant.
- \`documents/\`: the same outputs, one page a file.
- \`csv/\` and \`datapackage.json\`: tables for spreadsheets and programs, with units and keys (Data Package 2.0).
- \`CITATION.cff\`, \`datacite.json\` and \`ro-crate-metadata.json\`: how to cite it and what it holds, for reference managers, for agencies that give DOIs, for research archives (Citation File Format 1.2, DataCite 4.5, RO-Crate 1.1).
- \`release.zip\`: all of it in one file, but the manifest and its signature.
- \`blind-key.txt\`: which blind code stood for which variant; its SHA-256 was published when the edition opened.
- \`manifest.json\`: SHA-256 of each file, and of the manifest of the release before. Its own SHA-256 is the digest of this release.
- \`signature.json\`: Ed25519 signature (RFC 8032) of the manifest, with the public key.
- \`verify.mjs\`: recomputes everything. Needs Node 20 or newer and nothing else.

## How to verify

    node verify.mjs

says how many figures were recomputed and whether all are equal. Compare the digest and the key that it prints with those that the publisher shows.

## How to cite

${house} (${day.slice(0, 4)}). ${name}, edition ${slug}, revision ${revision} [data set]. Published ${day}. Cite the digest too.

## Licence and allowed use

${licence.title} (${licence.name}), ${licence.path}. Copy, combine and build on it if you name the publisher and say what you changed.
A published figure describes the spools that were tested. It is no warranty, and no basis for lifting, climbing, towing or rescue: for those take rated equipment and qualified people.

## Format

Version ${FORMAT_VERSION}, written by Fairpull ${softwareVersion}. What is added keeps the number; it is raised where a program of before could not read what it is given.

- 3 (2026-11): an edition may have divisions. Added since: the measured diameter in \`csv/results.csv\`.
- 2 (2026-11): methods state their series, and quantities are named by them.
- 1 (2026-11): first version.
`,
  };
}
