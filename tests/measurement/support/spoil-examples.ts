/** Replaces each number of each example by something else, and prints what then gives a NaN or fails without a stated error. */
import { examples, exported, namesFor, valueOf } from './examples.js';

const by = process.argv[2] ?? 'NaN';

/** The example with each of its numbers, its sign too, replaced, one at a time. */
const spoiled = (code: string): string[] =>
  [...code.matchAll(/(?<![\w.'$-])-?\d[\d_]*(?:\.\d+)?(?![\w'])/g)].map(
    (match) => code.slice(0, match.index) + by + code.slice(match.index + match[0].length),
  );

function holdsNaN(value: unknown, depth = 0): boolean {
  if (typeof value === 'number') return Number.isNaN(value);
  if (value === null || typeof value !== 'object' || depth > 4) return false;
  const parts: unknown[] = value instanceof Float64Array ? [...value] : Object.values(value);
  return parts.some((one) => holdsNaN(one, depth + 1));
}

for (const { file, code } of examples.filter(({ isChecked }) => isChecked)) {
  for (const one of spoiled(code)) {
    try {
      if (holdsNaN(valueOf(one, namesFor(file)))) console.log(`${file}: ${one} gives NaN`);
    } catch (error) {
      if ((error as Error).constructor !== exported['MeasurementError']) console.log(`${file}: ${one} throws ${String(error)}`);
    }
  }
}
