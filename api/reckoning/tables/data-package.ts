import { sealOf } from '../../platform/identifiers/identifiers.js';
import { jsonFile } from '../release-files.js';
import type { ReleaseFile } from '../release-files.js';
import type { ReleaseInputs } from '../release-inputs.js';
import type { CsvText } from './csv-text.js';
import type { Column } from './table.js';

/**
 * Describes the CSV files of a release to programs: columns, types, units, keys, sizes and digests.
 * @see Data Package standard 2.0 with Table Schema 2.0 (datapackage.org)
 */
export function dataPackageFile(
  { house, isDemo, revision, publishedAt, licence, evidence }: ReleaseInputs,
  tables: readonly CsvText[],
): ReleaseFile {
  const { slug, name } = evidence.edition;
  return jsonFile('datapackage.json', {
    $schema: 'https://datapackage.org/profiles/2.0/datapackage.json',
    name: `edition-${slug}-revision-${revision}`,
    title: `${house}: ${name}`,
    description: `Independent bench tests of fishing line, every reading and what follows from it.${isDemo ? ' Invented for demonstration.' : ''}`,
    version: `${revision}.0.0`,
    created: publishedAt,
    licenses: [licence],
    contributors: [{ title: house, roles: ['author'] }],
    resources: tables.map(resourceOf),
  });
}

function resourceOf(csv: CsvText) {
  const { table, path } = csv;
  const { sizeBytes, sha256 } = sealOf(csv.file().parts);
  return {
    name: table.name,
    type: 'table',
    title: table.title,
    path,
    scheme: 'file',
    format: 'csv',
    mediatype: 'text/csv',
    encoding: 'utf-8',
    bytes: sizeBytes,
    hash: `sha256:${sha256}`,
    dialect: { delimiter: ',', lineTerminator: '\r\n', quoteChar: '"', doubleQuote: true, header: true },
    schema: {
      fields: table.columns.map(fieldOf),
      missingValues: [''],
      primaryKey: table.primaryKey,
      foreignKeys: table.foreignKeys.map(({ columns, table: resource, references }) => ({
        fields: columns,
        reference: { resource, fields: references },
      })),
    },
  };
}

const fieldOf = ({ name, type, description, unit, isOptional }: Column) => ({
  name,
  type,
  description,
  ...(unit === undefined ? {} : { unit }),
  ...(isOptional ? {} : { constraints: { required: true } }),
});
