import { jsonFile } from '../release-files.js';
import type { ReleaseFile } from '../release-files.js';
import type { ReleaseInputs } from '../release-inputs.js';
import { cited } from './cited.js';

/**
 * What an agency for DOIs asks of a data set, ready to be handed in: all but the DOI.
 * @see DataCite Metadata Schema 4.5, in its JSON form (schema.datacite.org)
 */
export function dataCiteFile(inputs: ReleaseInputs): ReleaseFile {
  const { title, abstract, authors, publisher, version, publishedOn, keywords } = cited(inputs);
  const { licence } = inputs;
  return jsonFile('datacite.json', {
    schemaVersion: 'http://datacite.org/schema/kernel-4',
    types: { resourceTypeGeneral: 'Dataset', resourceType: 'Test results' },
    creators: authors.map((name) => ({ name, nameType: 'Organizational' })),
    titles: [{ title }],
    publisher: { name: publisher },
    publicationYear: publishedOn.slice(0, 4),
    dates: [{ date: publishedOn, dateType: 'Issued' }],
    version,
    language: 'en',
    subjects: keywords.map((subject) => ({ subject })),
    descriptions: [{ description: abstract, descriptionType: 'Abstract' }],
    rightsList: [{ rights: licence.title, rightsUri: licence.path, rightsIdentifier: licence.name, rightsIdentifierScheme: 'SPDX' }],
    formats: ['application/json', 'text/csv'],
  });
}
