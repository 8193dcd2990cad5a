/** Feeds every part of a schema what people and programs get wrong, and gathers what it answers. */
import type { z } from 'zod';

const WRONG: readonly unknown[] = [
  undefined,
  null,
  true,
  0,
  -1,
  1.5,
  1e12,
  Number.NaN,
  '',
  ' ',
  'x',
  '-',
  '1e9',
  '21/11/2026',
  '\u0000',
  'x'.repeat(3000),
  [],
  [null],
  {},
  { 'no such field': 1 },
];

type Part = z.core.$ZodType;
type Def = Record<string, unknown> & { readonly type: string };

/** The schemas that a schema is made of. */
function partsOf(schema: Part): Part[] {
  const def = schema._zod.def as unknown as Def;
  const inner = [def['innerType'], def['element'], def['in'], def['out'], def['keyType'], def['valueType'], def['left'], def['right']];
  const shape = def.type === 'object' ? Object.values(def['shape'] as Record<string, Part>) : [];
  const options = (def['options'] ?? def['items'] ?? []) as Part[];
  return [...inner.filter((part): part is Part => part !== undefined), ...shape, ...options];
}

/** Every sentence that a schema, or a part of it, answers a wrong input with. */
export function sentencesOf(root: z.ZodType): Set<string> {
  const sentences = new Set<string>();
  const seen = new Set<Part>();
  const visit = (schema: Part): void => {
    // A transform by itself is handed only what has passed.
    if (seen.has(schema) || schema._zod.def.type === 'transform') return;
    seen.add(schema);
    for (const input of WRONG) {
      const issues = (schema as z.ZodType).safeParse(input).error?.issues ?? [];
      for (const { message } of issues) sentences.add(message);
    }
    partsOf(schema).forEach(visit);
  };
  visit(root);
  return sentences;
}
