import { readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { REFERENCES } from './support/references.js';

const ROOT = fileURLToPath(new URL('../../api/measurement/', import.meta.url));
const files = readdirSync(ROOT, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.ts'));

interface DocumentedFunction {
  file: string;
  name: string;
  parameters: number;
  doc: string;
}

/** Every exported function with the comment right above it; the comment is empty where there is none. */
function exportedFunctions(file: string): DocumentedFunction[] {
  const source = readFileSync(ROOT + file, 'utf8');
  return [...source.matchAll(/^export (?:async )?function\*? (\w+)[^(]*\(([^{]*?)\)?:/gm)].map((match) => {
    const before = source.slice(0, match.index);
    const doc = /\/\*\*(?:(?!\*\/)[\s\S])*\*\/\n$/.exec(before)?.[0] ?? '';
    return { file, name: match[1]!, parameters: match[2]!.trim() === '' ? 0 : 1, doc };
  });
}

/** What a public docstring must say, each with the way to see it. */
const RULES: readonly [what: string, isMissing: (one: DocumentedFunction) => boolean][] = [
  ['one plain sentence', ({ doc }) => !/^\/\*\*\s+\* [A-Z][^@]*?[.?]/.test(doc)],
  ['a formula', ({ doc }) => !/\* Formula: \S/.test(doc)],
  ['@param for its arguments', ({ doc, parameters }) => parameters > 0 && !/@param \w+ \S/.test(doc)],
  ['@returns', ({ doc }) => !/@returns \S/.test(doc)],
  ['@throws', ({ doc }) => !/@throws \S/.test(doc)],
  ['one @example', ({ doc }) => doc.split('@example').length !== 2],
  ['@see with a key of references.ts', ({ doc }) => !Object.hasOwn(REFERENCES, /@see (\S+)/.exec(doc)?.[1] ?? '')],
];

const functions = files.flatMap(exportedFunctions);

test('the functions of the measurement core are found', () => {
  expect(functions.map((one) => one.name)).toEqual(
    expect.arrayContaining(['parseQuantity', 'summarise', 'grubbsTest', 'fiellerInterval', 'decideClaim']),
  );
  const exported = files.flatMap((file) => readFileSync(ROOT + file, 'utf8').match(/^export (?:async )?function/gm) ?? []);
  expect(functions).toHaveLength(exported.length);
});

test.each(RULES)('every exported function states %s', (_what, isMissing) => {
  expect(functions.filter(isMissing).map((one) => `${one.file}: ${one.name}`)).toEqual([]);
});

test('the rules see a missing docstring', () => {
  const bare: DocumentedFunction = { file: 'x.ts', name: 'x', parameters: 1, doc: '' };
  expect(RULES.filter(([, isMissing]) => !isMissing(bare)).map(([what]) => what)).toEqual([]);
});

// Purity: the same readings give the same figures on any machine, on any day.
test.each([
  ['a clock', /\bnew Date\b|\bDate\.(now|parse)\b|\bperformance\.now\b/],
  ['unseeded randomness', /\bMath\.random\b|\brandomUUID\b|\bgetRandomValues\b/],
  ['the machine', /\bprocess\.|\bglobalThis\b|from 'node:/],
])('the core uses no %s', (_name, pattern) => {
  expect(files.filter((file) => pattern.test(readFileSync(ROOT + file, 'utf8')))).toEqual([]);
});

test('the core imports only itself and pure libraries', () => {
  const isAllowed = (file: string, target: string): boolean => {
    if (!target.startsWith('.'))
      return target === 'decimal.js' || target === 'pure-rand' || target.startsWith('pure-rand/') || target.startsWith('@stdlib/');
    return new URL(target, `file:///core/${file}`).pathname.startsWith('/core/') && !target.includes('../'.repeat(file.split('/').length));
  };
  const outside = files.flatMap((file) =>
    [...readFileSync(ROOT + file, 'utf8').matchAll(/(?:from|import) '([^']+)'/g)]
      .map((match) => match[1]!)
      .filter((target) => !isAllowed(file, target))
      .map((target) => `${file}: ${target}`),
  );
  expect(outside).toEqual([]);
});
