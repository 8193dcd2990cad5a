/** Every @example of the core runs, and what stands after it in a comment is what comes out; "…" stands for more digits. */
import { readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { givensOf } from './support/example-givens.js';

const ROOT = fileURLToPath(new URL('../../api/measurement/', import.meta.url));
const files = readdirSync(ROOT, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.ts'));

const exported: Record<string, unknown> = {};
for (const file of files) Object.assign(exported, await import(ROOT + file));

const examples = files.flatMap((file) =>
  [...readFileSync(ROOT + file, 'utf8').matchAll(/@example (.+)/g)].map((match) => {
    const [code = '', expected] = match[1]!.split(' // ');
    return { file, code, expected };
  }),
);

function valueOf(code: string, names: Record<string, unknown>): unknown {
  // eslint-disable-next-line @typescript-eslint/no-implied-eval -- the examples are our own code, written in comments
  return (new Function(...Object.keys(names), `'use strict'; return (${code});`) as (...args: unknown[]) => unknown)(
    ...Object.values(names),
  );
}

/** Numbers cut off by "…" are compared as far as they are written; of an object, the members that are written. */
function fits(found: unknown, expected: unknown): boolean {
  if (typeof expected === 'string' && expected.endsWith('…')) return String(found).startsWith(expected.slice(0, -1));
  if (typeof expected === 'number' && typeof found === 'number')
    return Object.is(found, expected) || Math.abs(found - expected) <= 1e-9 * Math.abs(expected);
  if (expected !== null && typeof expected === 'object') {
    if (found === null || typeof found !== 'object') return false;
    return Object.entries(expected).every(([key, value]) => fits((found as Record<string, unknown>)[key], value));
  }
  return Object.is(found, expected);
}

const cutNumbersQuoted = (expected: string): string => expected.replaceAll(/-?\d[\d.]*…/g, "'$&'");

test('there are examples', () => expect(examples.length).toBeGreaterThan(150));

test.each(examples)('$file: $code', ({ file, code, expected }) => {
  const names = { ...exported, ...givensOf(file) };
  const found = valueOf(code, names);
  if (expected === undefined) return;
  const wanted = valueOf(cutNumbersQuoted(expected), names);
  expect({ found, isAsWritten: fits(found, wanted) }).toEqual({ found, isAsWritten: true });
});
