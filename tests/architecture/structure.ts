/**
 * The structure of api/ in figures, read from its imports and its calls of the database: `npm run structure` prints them, a test holds them.
 * Run with a folder as argument to measure another checkout.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize, relative } from 'node:path';
import ts from 'typescript';
import { modelsRead, plainObjects, relationsOf } from './reads-across.js';
import type { WayOfReading } from './reads-across.js';

export interface Structure {
  /** Types and classes that two files export under one name, "name: files". */
  readonly equalNames: readonly string[];
  /** Pairs of folders of api/ that import each other, "a ↔ b". */
  readonly mutualFolders: readonly string[];
  /** Imports from one feature into another that go neither to a read model nor to a module, "from → to". */
  readonly pastReadModels: readonly string[];
  /** Files of more than 200 lines, generated ones apart. */
  readonly longFiles: readonly string[];
  /** Files of api/measurement/ that no program comes to by its imports, and exports of it that nothing names, "file: export". */
  readonly unusedFormulas: readonly string[];
  /** Each place where a feature reads a table that another writes. */
  readonly readsAcross: readonly ReadAcross[];
  /** Words of the domain in the plumbing, "file: word". */
  readonly domainWords: readonly string[];
  /** Table → files that write it. */
  readonly writers: ReadonlyMap<string, readonly string[]>;
}

export interface ReadAcross {
  readonly file: string;
  readonly way: WayOfReading;
  readonly table: string;
  /** The feature that writes the table. */
  readonly owner: string;
}

/** What these hold is shared by all features. */
const SHARED_ROOMS = ['measurement', 'contract', 'readings', 'checks', 'reckoning', 'audit', 'platform'];
const LONG = 200;
const WRITES = /^(create|createMany|createManyAndReturn|update|updateMany|updateManyAndReturn|upsert|delete|deleteMany)$/;
const RAW_WRITE = /\b(?:INSERT INTO|UPDATE|DELETE FROM)\s+"?([a-z_]+)"?(?=\s+(?:SET|\(|WHERE|SELECT|VALUES))/g;

interface Source {
  readonly path: string;
  readonly text: string;
  readonly tree: ts.SourceFile;
}

function sourcesBelow(root: string, folder = 'api'): Source[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .map((name) => join(folder, name))
    .filter((path) => path.endsWith('.ts') && !path.includes('/generated/'))
    .sort()
    .map((path) => {
      const text = readFileSync(join(root, path), 'utf8');
      return { path, text, tree: ts.createSourceFile(path, text, ts.ScriptTarget.Latest) };
    });
}

const roomOf = (path: string): string => (path.split('/').length > 2 ? (path.split('/')[1] ?? '') : '');

/** What the plumbing has no word for; "role" is not among them, for who may call what is typed by the contract's. */
const DOMAIN =
  /\b(spool|specimen|submission|edition|release|tester|reviewer|editor|maker|variant|fishing|rig|blind|retest|round[ -]?robin|standings|readings|erratum|control pull)s?\b/gi;

const domainWords = (sources: readonly Source[]): string[] =>
  sources
    .filter(({ path }) => path.startsWith('api/platform/'))
    .flatMap(({ path, text }) => [...new Set([...text.matchAll(DOMAIN)].map(([word]) => `${path}: ${word}`))]);

function importsOf({ path, tree }: Source): string[] {
  return tree.statements.flatMap((statement) => {
    const isImport = ts.isImportDeclaration(statement) || ts.isExportDeclaration(statement);
    const target =
      isImport && statement.moduleSpecifier && ts.isStringLiteral(statement.moduleSpecifier) ? statement.moduleSpecifier.text : '';
    return target.startsWith('.') ? [normalize(join(dirname(path), target)).replace(/\.js$/, '.ts')] : [];
  });
}

function mutual(edges: readonly (readonly [string, string])[]): string[] {
  const rooms = new Set(edges.map(([from, to]) => `${roomOf(from)} → ${roomOf(to)}`));
  const pairs = [...rooms].flatMap((arrow) => {
    const [from = '', to = ''] = arrow.split(' → ');
    return from < to && rooms.has(`${to} → ${from}`) ? [`${from} ↔ ${to}`] : [];
  });
  return pairs.sort();
}

function modelsOf(root: string): string[] {
  const folder = join(root, 'prisma/models');
  return readdirSync(folder).map((name) => readFileSync(join(folder, name), 'utf8'));
}

/** Prisma's name of a model → its table. */
function tablesOf(models: readonly string[]): Map<string, string> {
  return new Map(
    models.flatMap((text) =>
      [...text.matchAll(/^model (\w+) \{[\s\S]*?@@map\("(\w+)"\)/gm)].map(([, model = '', table = '']) => [
        model.charAt(0).toLowerCase() + model.slice(1),
        table,
      ]),
    ),
  );
}

/** Tables that a file writes: by Prisma's client, by the insertion of rows, by plain SQL. */
function tablesWritten({ text, tree }: Source, tables: ReadonlyMap<string, string>): string[] {
  const written = [...text.matchAll(RAW_WRITE)].map(([, table = '']) => table);
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node)) {
      const called = node.expression;
      if (ts.isPropertyAccessExpression(called) && WRITES.test(called.name.text) && ts.isPropertyAccessExpression(called.expression))
        written.push(tables.get(called.expression.name.text) ?? '');
      const table = ts.isIdentifier(called) && called.text === 'tableRows' ? node.arguments[0] : undefined;
      if (table && ts.isStringLiteral(table)) written.push(table.text);
    }
    ts.forEachChild(node, visit);
  };
  visit(tree);
  const known = new Set(tables.values());
  return [...new Set(written)].filter((table) => known.has(table));
}

function readsAcross(
  sources: readonly Source[],
  models: readonly string[],
  tables: ReadonlyMap<string, string>,
  writers: ReadonlyMap<string, readonly string[]>,
): Structure['readsAcross'] {
  const relations = relationsOf(models);
  const modelOf = new Map([...tables].map(([model, table]) => [table, model]));
  const shared = new Map(sources.flatMap(({ tree }) => [...plainObjects(tree, true)]));
  return sources.flatMap(({ path, tree }) =>
    modelsRead(tree, relations, modelOf, shared).flatMap(({ model, way }) => {
      const table = tables.get(model) ?? '';
      const owner = roomOf(writers.get(table)?.[0] ?? '');
      return ['', 'platform', roomOf(path)].includes(owner) || roomOf(path) === '' ? [] : [{ file: path, way, table, owner }];
    }),
  );
}

/** Programs: the files of api/ that a command of package.json starts, and what these start by name. */
function programs(root: string): string[] {
  const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { scripts: Record<string, string> };
  return [
    ...Object.values(scripts)
      .join(' ')
      .matchAll(/\bapi\/\S+\.ts\b/g),
  ]
    .map(([path]) => path)
    .concat('api/main.ts', 'api/worker.ts');
}

function unusedFormulas(root: string, sources: readonly Source[]): string[] {
  const byPath = new Map(sources.map((source) => [source.path, source]));
  const reached = new Set<string>();
  const waiting = programs(root);
  for (let path = waiting.pop(); path !== undefined; path = waiting.pop()) {
    const source = byPath.get(path);
    if (!source || reached.has(path)) continue;
    reached.add(path);
    waiting.push(...importsOf(source));
  }
  const formulas = sources.filter(({ path }) => path.startsWith('api/measurement/'));
  return [...formulas.filter(({ path }) => !reached.has(path)).map(({ path }) => path), ...namedByNobody(formulas, sources)];
}

/** Functions and constants that formulas export and that stand in the program where they are made and nowhere else. */
function namedByNobody(formulas: readonly Source[], sources: readonly Source[]): string[] {
  const times = new Map<string, number>();
  const count = (node: ts.Node): void => {
    if (ts.isIdentifier(node)) times.set(node.text, (times.get(node.text) ?? 0) + 1);
    ts.forEachChild(node, count);
  };
  for (const { tree } of sources) count(tree);
  return formulas.flatMap(({ path, text }) =>
    [...text.matchAll(/^export (?:function\*?|const|class) (\w+)/gm)].flatMap(([, name = '']) =>
      (times.get(name) ?? 0) > 1 ? [] : [`${path}: ${name}`],
    ),
  );
}

const isType = (node: ts.Statement): node is ts.InterfaceDeclaration | ts.TypeAliasDeclaration | ts.ClassDeclaration =>
  ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node) || ts.isClassDeclaration(node);

function equalNames(sources: readonly Source[]): string[] {
  const files = new Map<string, string[]>();
  for (const { path, tree } of sources)
    for (const node of tree.statements) {
      const isExported = isType(node) && node.modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);
      if (isExported && node.name) files.set(node.name.text, [...(files.get(node.name.text) ?? []), path]);
    }
  return [...files].filter(([, paths]) => paths.length > 1).map(([name, paths]) => `${name}: ${paths.join(', ')}`);
}

/** Measures the checkout at `root`. */
export function measureStructure(root = '.'): Structure {
  const sources = sourcesBelow(root);
  const edges = sources
    .flatMap((source) => importsOf(source).map((to) => [source.path, to] as const))
    .filter(([from, to]) => to.startsWith('api/') && roomOf(from) !== '' && roomOf(to) !== '' && roomOf(from) !== roomOf(to));
  const models = modelsOf(root);
  const tables = tablesOf(models);
  const writers = new Map<string, string[]>();
  for (const source of sources)
    for (const table of tablesWritten(source, tables)) writers.set(table, [...(writers.get(table) ?? []), source.path]);
  return {
    equalNames: equalNames(sources),
    mutualFolders: mutual(edges),
    pastReadModels: edges
      .filter(([from, to]) => ![from, to].some((path) => SHARED_ROOMS.includes(roomOf(path))) && !/\.(read-model|module)\.ts$/.test(to))
      .map(([from, to]) => `${from} → ${to}`),
    longFiles: sources.filter(({ text }) => text.split('\n').length > LONG + 1).map(({ path }) => path),
    unusedFormulas: unusedFormulas(root, sources),
    domainWords: domainWords(sources),
    readsAcross: readsAcross(sources, models, tables, writers),
    writers,
  };
}

const WORDS_OF_WAY = {
  relation: 'tables of other features read through relations',
  filter: 'tables of other features looked through in conditions and orders',
  direct: 'tables of other features asked directly',
  sql: 'tables of other features in plain SQL',
} satisfies Record<WayOfReading, string>;

function print({
  equalNames: equal,
  mutualFolders,
  pastReadModels,
  longFiles,
  unusedFormulas,
  readsAcross: across,
  domainWords: words,
  writers,
}: Structure): void {
  const several = [...writers].filter(([, files]) => files.length > 1);
  const lines = [
    `folders that import each other: ${mutualFolders.length}`,
    ...mutualFolders.map((pair) => `  ${pair}`),
    `imports between features past read models: ${pastReadModels.length}, to ${new Set(pastReadModels.map((one) => one.split(' → ')[1])).size} files`,
    `types of one name: ${equal.length}`,
    ...equal.map((one) => `  ${one}`),
    `files of more than ${LONG} lines: ${longFiles.length}`,
    ...longFiles.map((path) => `  ${path}`),
    `files and exports of measurement/ that no program uses: ${unusedFormulas.length}`,
    ...unusedFormulas.map((path) => `  ${path}`),
    ...Object.entries(WORDS_OF_WAY).flatMap(([way, words]) => {
      const reads = across.filter((read) => read.way === way);
      return [`${words}: ${reads.length}`, ...new Set(reads.map(({ file, table, owner }) => `  ${file}: ${table} (${owner})`))];
    }),
    `words of the domain in platform/: ${words.length}`,
    ...words.map((one) => `  ${one}`),
    `tables written by more than one file: ${several.length} of ${writers.size}`,
    ...several.map(([table, files]) => `  ${table}: ${files.join(', ')}`),
  ];
  process.stdout.write(`${lines.join('\n')}\n`);
}

const isProgram = process.argv[1] !== undefined && relative(process.cwd(), process.argv[1]) === 'tests/architecture/structure.ts';
if (isProgram) print(measureStructure(process.argv[2]));
