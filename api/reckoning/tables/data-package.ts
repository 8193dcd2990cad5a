import { sha256 } from '../../platform/identifiers/identifiers.js';
import { jsonFile } from '../release-files.js';
import type { ReleaseFile } from '../release-files.js';
import type { ReleaseInputs } from '../release-inputs.js';
import { csvFile, csvPath } from './csv-file.js';
import type { Column, Table } from './table.js';

/**
 * Describes the CSV files of a release to programs: columns, types, units, keys, sizes and digests.
 * @see Data Package standard 2.0 with Table Schema 2.0 (datapackage.org)
 */
export function dataPackageFile(
  { house, isDemo, revision, publishedAt, licence, evidence }: ReleaseInputs,
  tables: readonly Table[],
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

function resourceOf(table: Table) {
  const { content } = csvFile(table);
  return {
    name: table.name,
    type: 'table',
    title: table.title,
    path: csvPath(table),
    scheme: 'file',
    format: 'csv',
    mediatype: 'text/csv',
    encoding: 'utf-8',
    bytes: Buffer.byteLength(content),
    hash: `sha256:${sha256(content)}`,
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
