/** Divisions of one edition: each compared by itself, over results that are fitted to the whole edition. */
import { isTaken, takes } from '../../api/contract/division.js';
import {
  categoryDocumentSchema,
  editionDocumentSchema,
  editionFileSchema,
  editionOfDivisionsSchema,
  recordsDocumentSchema,
  variantDocumentSchema,
} from '../../api/contract/documents/release-documents.js';
import { addressOf } from '../../api/public-api/address.js';
import { resultRows } from '../../api/public-api/results-table.js';
import { computeRelease } from '../../api/reckoning/compute-release.js';
import type { Bundle } from '../../api/reckoning/documents/bundle.js';
import type { ReleaseInputs } from '../../api/reckoning/release-inputs.js';
import { cellsOfFiles } from '../support/cells-of-files.js';
import { earlierEdition } from '../support/earlier-edition.js';
import { inventInputs } from '../support/invent-inputs.js';

const ANY = { materials: [], constructions: [] };
const one = inventInputs(5, { variants: 6, testers: 3, rigs: 2, specimens: 4 });
const slugs = one.variants.map(({ slug }) => slug);
const { scheme, ...edition } = one.evidence.edition;
const categories = scheme.rules.categories.filter(({ code }) => code !== 'knot');
const withoutKnot = { ...scheme, slug: 'plain', rules: { ...scheme.rules, categories } };
const [first, second] = [slugs.slice(0, 3), slugs.slice(3)];
const overruled = [{ variant: second[0]!, reason: 'Sold as braid, and made of one strand.' }];
const divisions = [
  { slug: 'braided', name: 'Braided', takes: ANY, scheme, variants: first, overruled: [] },
  { slug: 'nylon', name: 'Nylon', takes: ANY, scheme: withoutKnot, variants: second, overruled },
];
const several: ReleaseInputs = { ...one, evidence: { ...one.evidence, edition: { ...edition, divisions } } };

const filesOf = (inputs: ReleaseInputs) => new Map(computeRelease(inputs).map(({ path, content }) => [path, content]));
const [whole, divided] = [filesOf(one), filesOf(several)];
const read = (files: Map<string, string>, path: string): unknown => JSON.parse(files.get(`documents/${path}`)!);
const division = (slug: string, files = divided) => editionDocumentSchema.parse(read(files, `divisions/${slug}/edition.json`));

test('places run within a division alone, from the first on', () => {
  for (const { slug, variants } of divisions) {
    const { overall, incomplete, excluded, counts } = division(slug);
    const told = [...overall, ...incomplete, ...excluded].map(({ variant }) => variant.slug);
    expect([...new Set(told)].toSorted()).toEqual(variants);
    expect(overall[0]!.place).toBe(1);
    expect(Math.max(...overall.map(({ place }) => place ?? 0))).toBeLessThanOrEqual(variants.length);
    expect(counts.entries).toBe(variants.length);
  }
});

test('each has the categories of its own scheme', () => {
  expect(division('braided').scheme.categories.map(({ code }) => code)).toContain('knot');
  expect(division('nylon').scheme.categories.map(({ code }) => code)).not.toContain('knot');
  expect(divided.has('documents/divisions/nylon/standings/knot.json')).toBe(false);
  const { rows, division: named } = categoryDocumentSchema.parse(read(divided, 'divisions/braided/standings/knot.json'));
  expect(named).toEqual({ slug: 'braided', name: 'Braided' });
  expect(rows.every(({ variant }) => first.includes(variant.slug))).toBe(true);
});

test('values are those of the bench of the whole edition: a division takes nothing from them', () => {
  for (const slug of slugs) {
    const [alone, among] = [whole, divided].map((files) => variantDocumentSchema.parse(read(files, `variants/${slug}.json`)));
    expect(among!.figures).toEqual(alone!.figures);
    expect(among!.division?.slug).toBe(first.includes(slug) ? 'braided' : 'nylon');
    expect(among!.history.at(-1)!.division).toBe(among!.division?.slug);
  }
});

test('a division of which nothing tells how diameters scatter has values without places, whatever is known of another', () => {
  const { submissions } = one.evidence;
  const known = first.slice(0, 2);
  const measured = submissions.map((given) =>
    given.method.slug === 'diameter' && !known.includes(given.variant) ? { ...given, specimens: given.specimens.slice(0, 1) } : given,
  );
  const files = filesOf({ ...several, evidence: { ...several.evidence, submissions: measured } });
  const toldOf = (slug: string) => {
    const { scheme: own, incomplete, overall } = division(slug, files);
    const { unplaced } = own.categories.find(({ code }) => code === 'stress')!;
    return { unplaced, incomplete: incomplete.map(({ variant }) => variant.slug), overall: overall.length };
  };
  expect(toldOf('braided')).toEqual({ unplaced: undefined, incomplete: [first[2]], overall: 2 });
  expect(toldOf('nylon')).toEqual({ unplaced: 'nothingKnownOfScatter', incomplete: [], overall: 3 });
});

test('why an editor put an entry against the rule is published where it stands', () => {
  expect(division('nylon').overruled).toEqual(overruled);
  expect(variantDocumentSchema.parse(read(divided, `variants/${second[0]!}.json`)).overruled).toBe(overruled[0]!.reason);
});

test('the edition lists its divisions, with no standings of its own', () => {
  const listed = editionOfDivisionsSchema.parse(read(divided, 'edition.json')).divisions;
  expect(listed.map(({ slug, variants }) => [slug, variants])).toEqual(divisions.map(({ slug, variants }) => [slug, variants]));
  for (const path of ['records.json', 'pairs.json', 'standings/knot.json']) expect(divided.has(`documents/${path}`)).toBe(false);
});

test('an edition with one shows no trace of them', () => {
  editionFileSchema.parse(read(whole, 'edition.json'));
  for (const [path, content] of whole) {
    expect(path).not.toContain('division');
    if (/\.(json|csv)$/.test(path)) expect(content).not.toContain('division');
  }
});

test('tables for spreadsheets tell the division of each row', () => {
  for (const table of ['standings', 'results']) {
    const [head, ...rows] = divided.get(`csv/${table}.csv`)!.trim().split('\r\n');
    expect(head).toMatch(/division,/);
    for (const row of rows) expect(row).toContain(`${first.some((slug) => row.includes(slug)) ? 'braided' : 'nylon'},`);
  }
});

test('the table of all editions tells the division of each row, and none of an edition that has one', () => {
  const rowsOf = (files: Map<string, string>) =>
    resultRows([{ edition: '2026', revision: 1, results: files.get('csv/results.csv')!, variants: files.get('csv/variants.csv')! }]);
  for (const { variant = '', ...row } of rowsOf(divided)) expect(row['division']).toBe(first.includes(variant) ? 'braided' : 'nylon');
  expect(new Set(rowsOf(whole).map((row) => row['division']))).toEqual(new Set(['']));
});

const after = (before: Map<string, string>): ReleaseInputs => {
  const files = [...before].map(([path, content]) => ({ path, content, mediaType: '' }));
  return { ...several, earlier: [{ ...earlierEdition(files, 'a'.repeat(64)), edition: '2025' }] };
};

test('places of an edition that was not divided do not compare; values do', () => {
  const [fromWhole, fromDivided] = [whole, divided].map((before) => filesOf(after(before)));
  const kinds = (files: Map<string, string>) => division('braided', files).overall.map(({ movement }) => movement.kind);
  expect(new Set(kinds(fromWhole!))).toEqual(new Set(['new']));
  expect(kinds(fromDivided!)).not.toContain('new');
  const rowsIn = (files: Map<string, string>) => categoryDocumentSchema.parse(read(files, 'divisions/braided/standings/knot.json')).rows;
  expect(new Set(rowsIn(fromWhole!).map(({ movement }) => movement.kind))).toEqual(new Set(['new']));
  expect(rowsIn(fromDivided!).map(({ movement }) => movement.kind)).not.toContain('new');
  expect(rowsIn(fromWhole!).map(({ change }) => change.kind)).not.toContain('first');
});

test('records and runs at the top are of the lines of a division, over the editions that had it', () => {
  const files = filesOf(after(divided));
  for (const { slug, variants } of divisions) {
    const { records, runs } = recordsDocumentSchema.parse(read(files, `divisions/${slug}/records.json`));
    expect(records.map(({ edition: when }) => when)).toContain('2025');
    expect(records.filter(({ variant }) => !variants.includes(variant))).toEqual([]);
    expect(Math.max(...runs.map(({ editions }) => editions.length))).toBe(2);
    expect(runs.filter(({ variant }) => !variants.includes(variant))).toEqual([]);
  }
});

/** What the next revision tells of itself, with this otherwise. */
function erratumOf(change: Partial<typeof several.evidence>) {
  const before = cellsOfFiles(divided);
  const expects = [{ where: `overall, ${second[0]!}, score`, before: before.cells[`overall, ${second[0]!}, score`]! }];
  const correction = { reasonCode: 'catalogueError', words: 'Put right.', expects, before, corrected: [] } as const;
  const files = filesOf({ ...several, revision: 2, correction, evidence: { ...several.evidence, ...change } });
  const [braided, nylon] = divisions.map(({ slug }) => division(slug, files).erratum);
  return { told: editionOfDivisionsSchema.parse(read(files, 'edition.json')).erratum!, braided, nylon };
}

test('an erratum tells division by division what changed, and the document of a division its own; of one where nothing changed none', () => {
  const exclusion = { reasonCode: 'notObtainable', words: 'No shop had it.', effect: 'closedUp' } as const;
  const entries = edition.entries.map((entry) => (entry.variant === second[0] ? { ...entry, exclusion } : entry));
  const instruments = several.evidence.instruments.map((one) => ({ ...one, name: `${one.name}, mended` }));
  const { told, braided, nylon } = erratumOf({ edition: { ...edition, divisions, entries }, instruments });
  expect(braided).toBeNull();
  const ofNylon = told.changes.filter((change) => change.division === 'nylon');
  expect(nylon!.changes).toEqual(ofNylon.map(({ division: _, ...change }) => change));
  expect(ofNylon.map(({ where }) => where)).toEqual(
    expect.arrayContaining([
      `overall, ${second[0]!}, place`,
      `documents/variants/${second[0]!}.json, content`,
      'documents/divisions/nylon/edition.json, content',
    ]),
  );
  expect([...new Set(told.changes.map((change) => change.division ?? change.where))]).toEqual(['nylon', 'documents/rigs.json, content']);
  expect(told.consequences).toBe(`Nylon: ${nylon!.consequences}; whole edition: 1 document changed`);
  expect(nylon!.consequences).toMatch(/\d+ places? changed.*, top group (un)?changed$/);
  expect([told.expected.length, nylon!.expected.length]).toEqual([1, 1]);
});

test('an entry that is put into another division is gone from one and new in the other, also where it has the same place there', () => {
  const moved = second[0]!;
  const [from, to] = [second, first].map((variants) => variants.filter((slug) => slug !== moved));
  const [braids, nylons] = divisions;
  const put = [
    { ...braids!, variants: [...to!, moved].sort() },
    { ...nylons!, variants: from!, overruled: [] },
  ];
  const { told, braided, nylon } = erratumOf({ edition: { ...edition, divisions: put } });
  const at = (changes: typeof told.changes) => changes.filter(({ where }) => where === `overall, ${moved}, score`);
  expect(at(told.changes)).toMatchObject([
    { division: 'braided', before: null },
    { division: 'nylon', after: null },
  ]);
  expect([at(braided!.changes).length, at(nylon!.changes).length]).toEqual([1, 1]);
  expect([braided!.expected.length, nylon!.expected.length]).toEqual([0, 1]);
});

test('the bundle holds the tables of each division', () => {
  const { outputs } = JSON.parse(divided.get('bundle.json')!) as Bundle;
  const tables = 'divisions' in outputs ? outputs.divisions : [];
  expect(tables.map(({ edition: one, categories: own }) => [one.division?.slug, own.map(({ category }) => category.code)])).toEqual(
    divisions.map(({ slug, scheme: { rules } }) => [slug, rules.categories.map(({ code }) => code)]),
  );
  const { outputs: alone } = JSON.parse(whole.get('bundle.json')!) as Bundle;
  expect(alone).not.toHaveProperty('divisions');
});

test('a line goes where the rule on material and construction says, in any case of letters', () => {
  const rule = { materials: ['Nylon 6'], constructions: ['monofilament' as const] };
  expect(takes(rule, { material: 'nylon 6', construction: 'monofilament' })).toBe(true);
  expect(takes(rule, { material: 'nylon 6', construction: 'braided' })).toBe(false);
  expect(takes(rule, { material: 'PVDF', construction: 'monofilament' })).toBe(false);
  expect(takes(ANY, { material: 'PVDF', construction: 'braided' })).toBe(true);
});

test.each([
  ['/v1/editions/2026/divisions/braided', 'divisions/braided/edition'],
  ['/v1/editions/2026/divisions/braided/standings', 'divisions/braided/edition'],
  ['/v1/editions/2026/divisions/braided/standings/knot', 'divisions/braided/standings/knot'],
  ['/v1/editions/2026/divisions/braided/records', 'divisions/braided/records'],
  ['/v1/editions/2026/divisions/braided/pairs', 'divisions/braided/pairs'],
  ['/v1/editions/2026/records', 'records'],
  ['/v1/editions/2026/variants/records', 'variants/records'],
])('%s is documents/%s.json', (path, document) => {
  expect(addressOf(path)).toEqual({ edition: '2026', revision: null, path: `documents/${document}.json` });
});

test.each(['board', 'braided', 'divisions/braided/claims', 'divisions/braided/standings/knot/x', 'rigs/pairs'])(
  'nothing stands at %s of an edition',
  (path) => {
    expect(addressOf(`/v1/editions/2026/${path}`)).toBeNull();
  },
);

test('every other address of an edition is taken', () => {
  for (const name of ['standings', 'records', 'pairs', 'variants', 'board', 'claims', 'rigs']) expect(isTaken(name)).toBe(true);
  expect(isTaken('braided')).toBe(false);
});
