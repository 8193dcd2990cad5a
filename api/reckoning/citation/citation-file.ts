import type { ReleaseFile } from '../release-files.js';
import type { ReleaseInputs } from '../release-inputs.js';
import { cited } from './cited.js';

/**
 * How to cite a release, for programs and people.
 * @see Citation File Format 1.2.0 (citation-file-format.github.io); a text of JSON is one of YAML 1.2, so quoting is never in doubt
 */
export function citationFile(inputs: ReleaseInputs): ReleaseFile {
  const { title, abstract, authors, version, publishedOn, keywords } = cited(inputs);
  const lines = {
    'cff-version': '1.2.0',
    message: 'Cite this data set as below, and the digest of its manifest with it.',
    type: 'dataset',
    title,
    abstract,
    authors: authors.map((name) => ({ name })),
    version,
    'date-released': publishedOn,
    license: inputs.licence.name,
    keywords,
  };
  const content = Object.entries(lines).map(([key, value]) => `${key}: ${JSON.stringify(value)}\n`);
  return { path: 'CITATION.cff', mediaType: 'text/yaml; charset=utf-8', content: content.join('') };
}
