/** Every @example of the core runs, and what stands after it in a comment is what comes out; "…" stands for more digits. */
import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { examples, namesFor, valueOf } from './support/examples.js';

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

test('there are examples', () => expect(examples.length).toBeGreaterThan(125));

test.each(examples)('$file: $code', ({ file, code, expected }) => {
  const names = namesFor(file);
  const found = valueOf(code, names);
  if (expected === undefined) return;
  const wanted = valueOf(cutNumbersQuoted(expected), names);
  expect({ found, isAsWritten: fits(found, wanted) }).toEqual({ found, isAsWritten: true });
});

test.each(['NaN', '0', '-1', 'Infinity'])(
  'no number of any example, replaced by %s, makes a NaN: it is refused or has a stated result',
  async (by) => {
    // In a process of its own: inside jest arithmetic is ten times slower.
    const program = ['--import', './.config/load-typescript.mjs', 'tests/measurement/support/spoil-examples.ts', by];
    const { stdout } = await promisify(execFile)(process.execPath, program);
    expect(stdout).toBe('');
  },
  120_000,
);
