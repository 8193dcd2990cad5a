/** JSON Schemas of ours after published standards, of whose validators none is kept for this language. */
const text = { type: 'string', minLength: 1 };
const day = { type: 'string', pattern: '^\\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\\d|3[01])$' };
const address = { type: 'string', pattern: '^https?://' };
const oneOf = (...words: string[]) => ({ enum: words });
const object = (required: readonly string[], properties: object) => ({ type: 'object', required, properties, additionalProperties: false });
const listOf = (items: object) => ({ type: 'array', minItems: 1, uniqueItems: true, items });
/** SPDX short identifiers of the licences that a house may choose. */
const licence = oneOf('CC-BY-4.0', 'CC0-1.0', 'ODC-By-1.0');

/** DataCite Metadata Schema 4.5 (datacite-metadata-schema.readthedocs.io/en/4.5): obligations, controlled lists of appendix 1. The DOI comes from the agency. */
export const DATACITE = object(['types', 'creators', 'titles', 'publisher', 'publicationYear', 'schemaVersion'], {
  schemaVersion: { const: 'http://datacite.org/schema/kernel-4' },
  types: object(['resourceTypeGeneral'], { resourceTypeGeneral: oneOf('Dataset', 'Collection', 'Report', 'Other'), resourceType: text }),
  creators: listOf(object(['name'], { name: text, nameType: oneOf('Organizational', 'Personal') })),
  titles: listOf(
    object(['title'], { title: text, titleType: oneOf('AlternativeTitle', 'Subtitle', 'TranslatedTitle', 'Other'), lang: text }),
  ),
  publisher: object(['name'], { name: text, publisherIdentifier: text, publisherIdentifierScheme: text, schemeUri: address, lang: text }),
  publicationYear: { type: 'string', pattern: '^\\d{4}$' },
  dates: listOf(
    object(['date', 'dateType'], {
      date: day,
      dateType: oneOf(
        'Accepted',
        'Available',
        'Collected',
        'Copyrighted',
        'Created',
        'Issued',
        'Submitted',
        'Updated',
        'Valid',
        'Withdrawn',
      ),
    }),
  ),
  version: text,
  language: { type: 'string', pattern: '^[a-z]{2,3}(-[A-Za-z0-9]+)*$' },
  subjects: listOf(object(['subject'], { subject: text, subjectScheme: text, lang: text })),
  descriptions: listOf(
    object(['description', 'descriptionType'], {
      description: text,
      descriptionType: oneOf('Abstract', 'Methods', 'SeriesInformation', 'TableOfContents', 'TechnicalInfo', 'Other'),
      lang: text,
    }),
  ),
  rightsList: listOf(
    object([], { rights: text, rightsUri: address, rightsIdentifier: licence, rightsIdentifierScheme: text, schemeUri: address }),
  ),
  formats: listOf(text),
});

/** Citation File Format 1.2.0 (citation-file-format.github.io): what must be there, and of what else may be what is used. */
export const CITATION_FILE = object(['cff-version', 'message', 'title', 'authors'], {
  'cff-version': { const: '1.2.0' },
  message: text,
  type: oneOf('dataset', 'software'),
  title: text,
  abstract: text,
  authors: listOf(object(['name'], { name: text, website: address })),
  version: { anyOf: [text, { type: 'number' }] },
  'date-released': day,
  license: licence,
  keywords: listOf(text),
});

const holds = (part: object) => ({ contains: { type: 'object', ...part } });
const reference = (id: object) => ({ type: 'object', required: ['@id'], properties: { '@id': id } });

/** RO-Crate 1.1 (w3id.org/ro/crate/1.1): the descriptor, the root with its four properties, and that each entity has an id and a type. */
export const RO_CRATE = object(['@context', '@graph'], {
  '@context': { const: 'https://w3id.org/ro/crate/1.1/context' },
  '@graph': {
    type: 'array',
    uniqueItems: true,
    items: { type: 'object', required: ['@id', '@type'], properties: { '@id': text } },
    allOf: [
      holds({
        required: ['conformsTo', 'about'],
        properties: {
          '@id': { const: 'ro-crate-metadata.json' },
          '@type': { const: 'CreativeWork' },
          conformsTo: reference({ const: 'https://w3id.org/ro/crate/1.1' }),
          about: reference({ const: './' }),
        },
      }),
      holds({
        required: ['name', 'description', 'datePublished', 'license', 'hasPart'],
        properties: {
          '@id': { const: './' },
          '@type': { const: 'Dataset' },
          name: text,
          description: text,
          datePublished: day,
          license: reference(address),
          hasPart: listOf(reference({ type: 'string', pattern: '^[^/.]' })),
        },
      }),
    ],
  },
});

const name = { type: 'string', pattern: '^[-a-z0-9._/]+$' };
const keys = listOf(text);

/** Data Package 2.0, Data Resource 2.0 and Table Schema 2.0 (datapackage.org/standard), of tables alone. */
export const DATA_PACKAGE = {
  type: 'object',
  required: ['resources'],
  properties: {
    $schema: { const: 'https://datapackage.org/profiles/2.0/datapackage.json' },
    name,
    title: text,
    version: text,
    created: { type: 'string', pattern: '^\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}:\\d{2}(\\.\\d+)?Z$' },
    homepage: address,
    keywords: keys,
    licenses: listOf({
      type: 'object',
      anyOf: [{ required: ['name'] }, { required: ['path'] }],
      properties: { name: licence, path: address, title: text },
    }),
    contributors: listOf({ type: 'object', minProperties: 1, properties: { title: text, roles: keys, path: address } }),
    resources: listOf({
      type: 'object',
      required: ['name', 'path'],
      properties: {
        name,
        path: { type: 'string', pattern: '^[^./~][^\\\\]*$', not: { pattern: '/\\.\\./' } },
        type: { const: 'table' },
        format: text,
        mediatype: { type: 'string', pattern: '^.+/.+$' },
        encoding: text,
        bytes: { type: 'integer', minimum: 1 },
        hash: { type: 'string', pattern: '^sha256:[0-9a-f]{64}$' },
        schema: {
          type: 'object',
          required: ['fields'],
          properties: {
            fields: listOf({
              type: 'object',
              required: ['name', 'type'],
              properties: {
                name: text,
                type: oneOf('string', 'number', 'integer', 'boolean', 'date', 'time', 'datetime', 'year', 'any'),
                description: text,
                constraints: object([], {
                  required: { type: 'boolean' },
                  unique: { type: 'boolean' },
                  enum: { type: 'array', minItems: 1 },
                }),
              },
            }),
            primaryKey: keys,
            foreignKeys: {
              type: 'array',
              items: object(['fields', 'reference'], {
                fields: keys,
                reference: object(['fields'], { resource: { type: 'string' }, fields: keys }),
              }),
            },
          },
        },
      },
    }),
  },
};
