/** The tables of a release, read back by their own description, as a program that knows only the standard would. */
import { Cite } from '@citation-js/core';
import '@citation-js/plugin-cff';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { parse } from 'csv-parse/sync';
import { zipSync } from 'fflate';
import { ROCrate } from 'ro-crate';
import { parse as parseYaml } from 'yaml';
import type { Manifest, VariantDocument } from '../../api/contract/documents/release-documents.js';
import { sha256 } from '../../api/platform/identifiers/identifiers.js';
import { resultRows } from '../../api/public-api/results-table.js';
import { computeRelease } from '../../api/reckoning/compute-release.js';
import { archiveOf } from '../support/archive-of.js';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { moveEdition, publish } from '../support/season.js';
import { inventInputs } from '../support/invent-inputs.js';
import { withTwoKnots } from '../support/with-two-knots.js';
import { createHouse, workEdition } from '../support/house.js';
import type { House } from '../support/house.js';
import { CITATION_FILE, DATA_PACKAGE, DATACITE, RO_CRATE } from './standard-schemas.js';

interface Resource {
  readonly name: string;
  readonly path: string;
  readonly bytes: number;
  readonly hash: string;
  readonly schema: {
    readonly fields: readonly { name: string; type: string; description: string; constraints?: { required: true } }[];
    readonly primaryKey: readonly string[];
    readonly foreignKeys: readonly { fields: readonly string[]; reference: { resource: string; fields: readonly string[] } }[];
  };
}
type Row = Record<string, string>;

let house: House;
let resources: readonly Resource[];
const bytes = new Map<string, string>();
const rows = new Map<string, Row[]>();
let description: any;
const file = async (path: string) => (await house.t.app.inject({ method: 'GET', url: `/v1/releases/2026/1/${path}` })).payload;

beforeAll(async () => {
  house = await createHouse();
  await workEdition(house, '2026');
  await moveEdition(house.editor, '2026', 'closure');
  await house.t.app.select(ReleasesModule).get(ReleaseWork).start(false);
  await publish(house.editor, '2026');
  description = JSON.parse(await file('datapackage.json'));
  resources = description.resources;
  for (const { name, path } of resources) {
    bytes.set(name, await file(path));
    rows.set(name, parse(bytes.get(name)!, { columns: true }));
  }
});
afterAll(() => house.t.close());

// Properties and patterns: Data Package 2.0, Data Resource 2.0 and Table Schema 2.0 (datapackage.org/standard).
test('names, licence and contributors are as the standard has them', () => {
  expect(description.$schema).toBe('https://datapackage.org/profiles/2.0/datapackage.json');
  expect(description.licenses).toEqual([
    { name: 'CC-BY-4.0', title: 'Creative Commons Attribution 4.0', path: 'https://creativecommons.org/licenses/by/4.0/' },
  ]);
  expect(description.contributors[0].roles).toEqual(['author']);
  expect(Date.parse(description.created)).not.toBeNaN();
  for (const { name } of [description, ...resources]) expect(name).toMatch(/^[a-z0-9._-]+$/);
  expect(resources.map(({ name }) => name)).toEqual(['variants', 'claims', 'standings', 'results', 'submissions', 'specimens', 'readings']);
});

test('each file is of the size and digest that is stated', () => {
  for (const { name, hash, bytes: size } of resources) {
    expect([name, `sha256:${sha256(bytes.get(name)!)}`, Buffer.byteLength(bytes.get(name)!)]).toEqual([name, hash, size]);
  }
});

test('each file has the columns that are described, and cells of their types', () => {
  const fits: Record<string, RegExp> = { integer: /^\d+$/, number: /^-?\d+(\.\d+)?$/, date: /^\d{4}-\d\d-\d\d$/, string: /./ };
  for (const { name, schema } of resources) {
    const [heading] = bytes.get(name)!.split('\r\n');
    expect(parse(heading!)[0]).toEqual(schema.fields.map((field) => field.name));
    expect(rows.get(name)!.length).toBeGreaterThan(0);
    for (const row of rows.get(name)!) {
      for (const { name: column, type, constraints } of schema.fields) {
        const cell = row[column]!;
        if (cell === '') expect([name, column, constraints]).toEqual([name, column, undefined]);
        else expect([name, column, cell, fits[type]!.test(cell)]).toEqual([name, column, cell, true]);
      }
    }
  }
});

test('primary keys are unique, and foreign keys lead to a row', () => {
  const keyOf = (row: Row, columns: readonly string[]) => columns.map((column) => row[column]).join('\u0000');
  for (const { name, schema } of resources) {
    const own = rows.get(name)!.map((row) => keyOf(row, schema.primaryKey));
    expect([name, new Set(own).size]).toEqual([name, own.length]);
    for (const { fields, reference } of schema.foreignKeys) {
      const known = new Set(rows.get(reference.resource)!.map((row) => keyOf(row, reference.fields)));
      expect([name, rows.get(name)!.filter((row) => !known.has(keyOf(row, fields)))]).toEqual([name, []]);
    }
  }
});

test('every reading of every accepted submission is there, as entered', () => {
  const specimens = rows.get('specimens')!.length;
  expect(specimens).toBeGreaterThan(20);
  expect(rows.get('readings')!.length).toBeGreaterThanOrEqual(specimens);
  expect(rows.get('readings')![0]).toMatchObject({
    'entered unit': expect.stringMatching(/./),
    unit: expect.stringMatching(/^(N|m|s|kg)$/),
  });
});

test('each result tells how thick its line is, as the page of the variant does: the strongest of a thickness is picked from the file, or from that of all editions', () => {
  const inputs = withTwoKnots(inventInputs(5, { variants: 5, testers: 3, rigs: 2, specimens: 5 }));
  const files = new Map(computeRelease(inputs).map(({ path, content }) => [path, content]));
  const results = files.get('csv/results.csv')!;
  const figureOf = (slug: string) =>
    (JSON.parse(files.get(`documents/variants/${slug}.json`)!) as VariantDocument).figures.find(({ quantity }) =>
      quantity.startsWith('diameter/'),
    )!;
  const own: Row[] = parse(results, { columns: true });
  expect(new Set(own.map((row) => row['diameter'])).size).toBe(5);
  for (const row of own) {
    const { value, low, high } = figureOf(row['variant']!);
    const told = [row['diameter'], row['diameter low 95 %'], row['diameter high 95 %'], row['diameter unit']];
    expect([low! < value, value < high!, told]).toEqual([true, true, [value, low, high, 'mm']]);
  }
  for (const row of resultRows([{ edition: '2026', revision: 1, results, variants: files.get('csv/variants.csv')! }])) {
    const { value, low, high } = figureOf(row['variant']!);
    expect(row).toMatchObject({ diameter: value, diameterLow95: low, diameterHigh95: high, diameterUnit: 'mm' });
  }
});

test('an archive that is written file by file is the one that a library makes of all at once', () => {
  const files = computeRelease(inventInputs(3));
  const inOrder = files.toSorted((one, other) => (one.path < other.path ? -1 : 1));
  const all = Object.fromEntries(inOrder.map(({ path, content }) => [path, Buffer.from(content)]));
  const expected = zipSync(all, { mtime: new Date(1980, 0, 1), level: 6 });
  expect(Buffer.from(archiveOf(files).content).equals(expected)).toBe(true);
});

test('whoever is handed the folder is told of each file in it, and of the format by its number', async () => {
  const { formatVersion, files } = JSON.parse(await file('manifest.json')) as Manifest;
  const readme = await file('README.md');
  const told = [...readme.matchAll(/`([^`]+)`/g)].map(([, name]) => name);
  const named = new Set(files.map(({ path }) => path.replace(/\/.*/, '/')));
  expect([...named].filter((path) => path !== 'README.md' && !told.includes(path))).toEqual([]);
  expect(readme).toContain(`Version ${formatVersion}, written by`);
  for (let version = formatVersion as number; version > 0; version--) expect(readme).toMatch(new RegExp(`^- ${version} \\(`, 'm'));
});

// DataCite Metadata Schema 4.5 (schema.datacite.org): properties 1 to 10 that are mandatory but the DOI itself, and its controlled lists.
test('what an agency for DOIs asks for is there, in the terms of its lists', async () => {
  const metadata = JSON.parse(await file('datacite.json'));
  expect(metadata).toMatchObject({
    schemaVersion: 'http://datacite.org/schema/kernel-4',
    types: { resourceTypeGeneral: 'Dataset' },
    creators: [{ name: expect.stringMatching(/./), nameType: 'Organizational' }],
    titles: [{ title: expect.stringContaining('2026') }],
    publisher: { name: expect.stringMatching(/./) },
    publicationYear: expect.stringMatching(/^\d{4}$/),
    dates: [{ date: expect.stringMatching(/^\d{4}-\d\d-\d\d$/), dateType: 'Issued' }],
    descriptions: [{ description: expect.stringMatching(/./), descriptionType: 'Abstract' }],
    rightsList: [{ rightsIdentifier: 'CC-BY-4.0', rightsIdentifierScheme: 'SPDX' }],
  });
});

test('the citation file and the crate are read by the libraries of their own standards', async () => {
  // Citation File Format 1.2, read by citation-js; CSL-JSON comes out.
  const [cited] = new Cite(await file('CITATION.cff')).data;
  expect(cited).toMatchObject({ type: 'dataset', title: expect.stringContaining('2026') });
  // RO-Crate 1.1 and later: a root with name, licence and date, whose parts are all described.
  const crate = new ROCrate(JSON.parse(await file('ro-crate-metadata.json')), { array: true, link: true });
  const root = crate.root as unknown as Record<string, readonly Record<string, readonly string[]>[]>;
  for (const property of ['name', 'description', 'datePublished', 'license'])
    expect([property, root[property]]).toEqual([property, [expect.anything()]]);
  // All but itself, the program that verifies, and the archive that holds them all.
  const { files } = JSON.parse(await file('manifest.json')) as { files: { path: string }[] };
  const parts = root['hasPart']!.map((part) => part['@id'] as unknown as string);
  expect(files.map(({ path }) => path).filter((path) => !parts.includes(path) && !/ro-crate|release\.zip|verify\.mjs/.test(path))).toEqual(
    [],
  );
  for (const part of root['hasPart']!) expect([part['@id'], part['@type']]).toEqual([part['@id'], ['File']]);
});

test('each of them is as its standard says, by a validator that knows nothing of this program; without what a standard asks for it is not', async () => {
  const documents: [object, Record<string, unknown>][] = [
    [DATACITE, JSON.parse(await file('datacite.json'))],
    [CITATION_FILE, parseYaml(await file('CITATION.cff'))],
    [RO_CRATE, JSON.parse(await file('ro-crate-metadata.json'))],
    [DATA_PACKAGE, description],
  ];
  for (const [schema, document] of documents) {
    const check = new Ajv2020({ strict: false, allErrors: true }).compile<Record<string, unknown>>(schema);
    check(document);
    expect(check.errors ?? []).toEqual([]);
    for (const needed of (schema as { required: string[] }).required) {
      const { [needed]: _, ...without } = document;
      expect([needed, check(without)]).toEqual([needed, false]);
    }
  }
  const graph = documents[2]![1]['@graph'] as { '@id': string }[];
  for (const id of ['./', 'ro-crate-metadata.json']) {
    const check = new Ajv2020({ strict: false }).compile(RO_CRATE);
    expect([id, check({ ...documents[2]![1], '@graph': graph.filter((one) => one['@id'] !== id) })]).toEqual([id, false]);
  }
});
