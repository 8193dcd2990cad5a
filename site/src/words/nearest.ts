import type { Mapped } from '../release/mapped.js';

const MOST_NAMED = 3;

/** Those that are nearest to one in diameter and force, relative to its own; a line of the same name is no other line. */
export function nearest(lines: readonly Mapped[], slug: string): Mapped[] {
  const one = lines.find((line) => line.slug === slug);
  if (!one) return [];
  const distance = ({ force, diameter }: Mapped) => Math.hypot(force.value / one.force.value - 1, diameter.value / one.diameter.value - 1);
  const near: { line: Mapped; away: number }[] = [];
  // Each page asks this of all lines: nothing is sorted but those that are nearer than the third.
  for (const line of lines) {
    if (line.variant.line.slug === one.variant.line.slug) continue;
    const away = distance(line);
    if (near.length === MOST_NAMED && away >= (near.at(-1)?.away ?? 0)) continue;
    near.push({ line, away });
    near.sort((a, b) => a.away - b.away);
    near.splice(MOST_NAMED);
  }
  return near.map(({ line }) => line);
}
