/** The examples in the docstrings of the core, with all that they may name. */
import { readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { givensOf } from './example-givens.js';

const ROOT = fileURLToPath(new URL('../../../api/measurement/', import.meta.url));
const files = readdirSync(ROOT, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.ts'));

export const exported: Record<string, unknown> = {};
for (const file of files) Object.assign(exported, await import(ROOT + file));

export const examples = files.flatMap((file) =>
  [...readFileSync(ROOT + file, 'utf8').matchAll(/@throws (.+)(?:\n \* @see .+)*\n \* @example (.+)/g)].map((match) => {
    const [code = '', expected] = match[2]!.split(' // ');
    // The inner loops of the ranking say so: whoever calls them has checked.
    return { file, code, expected, isChecked: !match[1]!.startsWith('nothing') };
  }),
);

export const namesFor = (file: string): Record<string, unknown> => ({ ...exported, ...givensOf(file) });

export function valueOf(code: string, names: Record<string, unknown>): unknown {
  // eslint-disable-next-line @typescript-eslint/no-implied-eval -- the examples are our own code, written in comments
  const run = new Function(...Object.keys(names), `'use strict'; return (${code});`) as (...args: unknown[]) => unknown;
  return run(...Object.values(names));
}
