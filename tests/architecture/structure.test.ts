import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { WayOfReading } from './reads-across.js';
import { READS_THAT_STAY } from './reads-that-stay.js';
import { measureStructure } from './structure.js';

/** Stores that more than one feature writes through; each has its reason in .config/dependency-cruiser.cjs. */
const SHARED_STORES = [
  'api/catalogue/spools/spools.store.ts',
  'api/decisions/decisions.store.ts',
  'api/editions/editions.store.ts',
  'api/findings/findings.store.ts',
  'api/submissions/submissions.store.ts',
];

describe('the structure of api/', () => {
  const { domainWords, equalNames, longFiles, mutualFolders, pastReadModels, readsAcross, unusedFormulas, writers } = measureStructure();

  test('no two folders import each other', () => {
    expect(mutualFolders).toEqual([]);
  });

  test('features meet at read models; they write through five shared stores and nothing else', () => {
    expect([...new Set(pastReadModels.map((arrow) => arrow.split(' → ')[1]))].sort()).toEqual(SHARED_STORES);
  });

  test('a program uses each formula; what only tests need lies with them', () => {
    expect(unusedFormulas).toEqual([]);
  });

  test('no file is long', () => {
    expect(longFiles).toEqual([]);
  });

  test('nothing of another feature is read through a relation', () => {
    expect(readsAcross.filter(({ way }) => way === 'relation')).toEqual([]);
  });

  test('past read models are read the tables that are named with a reason, no other, and all of them', () => {
    const found = new Set(readsAcross.map(({ file, table }) => `${file}: ${table}`));
    const named = READS_THAT_STAY.flatMap(({ file, tables }) => tables.map((table) => `${file}: ${table}`));
    expect([...found].sort()).toEqual(named.sort());
    expect(READS_THAT_STAY.filter(({ why }) => why.length < 20)).toEqual([]);
  });

  test('nothing in the plumbing carries a word of the domain', () => {
    expect(domainWords).toEqual([]);
  });

  test('no two types have one name', () => {
    expect(equalNames).toEqual([]);
  });

  test('each table is written by one file', () => {
    expect(writers.size).toBeGreaterThan(40);
    expect([...writers].filter(([, files]) => files.length > 1)).toEqual([]);
  });
});

describe('the measure itself', () => {
  let root: string;
  const write = (path: string, text: string) => {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), text);
  };

  beforeAll(() => {
    root = mkdtempSync(join(tmpdir(), 'fairpull-structure-'));
    write(
      'prisma/models/a.prisma',
      'model SpoolLabel {\n  id String\n  pull Pull?\n  @@map("spool_label")\n}\nmodel Pull {\n  id String\n  label SpoolLabel\n  @@map("pull")\n}\n',
    );
    write('package.json', '{ "scripts": { "start": "node api/one/one.store.ts" } }');
    write('api/measurement/used.ts', 'export type Pull = number;\nexport const half = (x: number): number => x / 2;\n');
    write('api/measurement/unused.ts', '');
    write(
      'api/one/one.store.ts',
      `import '../two/two.js';\nimport '../measurement/used.js';\nawait tx.spoolLabel.update({});\nawait insertRows(tx, tableRows('pull', []));\n`,
    );
    write(
      'api/two/two.ts',
      `import '../one/one.read-model.js';\nexport const words = 'UPDATE nothing';\nexport const WITH_PULL = { pull: true };\nexport interface Pull {}\n`,
    );
    write(
      'api/two/two.store.ts',
      'await tx.$executeRaw`DELETE FROM "pull" WHERE true`;\nawait tx.pull.update({ data: { label: { connect: {} } } });\nawait tx.spoolLabel.findMany({ include: { pull: true } });\n',
    );
    write(
      'api/two/asks.ts',
      [
        "const ORDER = { orderBy: { pull: { id: 'asc' } } } as const;",
        'const WITH = { label: { pull: true } } satisfies Prisma.PullInclude;',
        'const seen = (): Prisma.SpoolLabelWhereInput => ({ OR: [{ pull: { is: null } }] });',
        'const some = (where: Prisma.SpoolLabelWhereInput) => client.spoolLabel.count({ where });',
        'await some({ AND: { pull: null } });',
        'await client.spoolLabel.findMany({ ...ORDER, where: { pull: { id: 1 } } });',
        'await client.spoolLabel.findMany({ include: WITH_PULL });',
        'await client.$queryRaw`SELECT 1 FROM "spool_label" JOIN nothing ON true`;',
      ].join('\n'),
    );
    write('api/platform/plumbing.ts', '// keeps a spool\n');
    write('api/one/one.read-model.ts', Array.from({ length: 202 }, () => '//').join('\n'));
  });
  afterAll(() => {
    rmSync(root, { recursive: true });
  });

  test('finds what it looks for, by client, by rows and by plain SQL', () => {
    const found = measureStructure(root);
    expect(found.mutualFolders).toEqual(['one ↔ two']);
    expect(found.pastReadModels).toEqual(['api/one/one.store.ts → api/two/two.ts']);
    expect(found.readsAcross.filter(({ owner }) => owner !== 'one')).toEqual([]);
    const times = (sought: WayOfReading) => found.readsAcross.filter(({ way }) => way === sought).length;
    expect([times('relation'), times('filter'), times('direct'), times('sql')]).toEqual([4, 4, 4, 1]);
    expect(found.domainWords).toEqual(['api/platform/plumbing.ts: spool']);
    expect(found.unusedFormulas).toEqual(['api/measurement/unused.ts', 'api/measurement/used.ts: half']);
    expect(found.equalNames).toEqual(['Pull: api/measurement/used.ts, api/two/two.ts']);
    expect(found.longFiles).toEqual(['api/one/one.read-model.ts']);
    expect(found.writers).toEqual(
      new Map([
        ['pull', ['api/one/one.store.ts', 'api/two/two.store.ts']],
        ['spool_label', ['api/one/one.store.ts']],
      ]),
    );
  });
});
