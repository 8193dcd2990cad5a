import { jsonFile } from '../release-files.js';
import type { NamedFile, ReleaseFile } from '../release-files.js';
import type { ReleaseInputs } from '../release-inputs.js';
import { cited } from './cited.js';

const PATH = 'ro-crate-metadata.json';
const SPECIFICATION = 'https://w3id.org/ro/crate/1.1';

/**
 * The release as a research object: what it is, whose, under which licence, and each file in it.
 * @see RO-Crate 1.1 (w3id.org/ro/crate/1.1), in the words of schema.org
 */
export function roCrateFile(inputs: ReleaseInputs, files: readonly NamedFile[]): ReleaseFile {
  const { title, abstract, publisher, version, publishedOn, keywords } = cited(inputs);
  const { licence } = inputs;
  const root = {
    '@id': './',
    '@type': 'Dataset',
    name: title,
    description: abstract,
    datePublished: publishedOn,
    version,
    keywords: keywords.join(', '),
    license: { '@id': licence.path },
    publisher: { '@id': '#publisher' },
    hasPart: files.map(({ path }) => ({ '@id': path })),
  };
  return jsonFile(PATH, {
    '@context': `${SPECIFICATION}/context`,
    '@graph': [
      { '@id': PATH, '@type': 'CreativeWork', conformsTo: { '@id': SPECIFICATION }, about: { '@id': './' } },
      root,
      { '@id': '#publisher', '@type': 'Organization', name: publisher },
      { '@id': licence.path, '@type': 'CreativeWork', name: licence.title, identifier: licence.name },
      ...files.map(fileOf),
    ],
  });
}

const fileOf = ({ path, mediaType }: NamedFile) => ({
  '@id': path,
  '@type': 'File',
  name: path,
  encodingFormat: mediaType.split(';')[0],
});
