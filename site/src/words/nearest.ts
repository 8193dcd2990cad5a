import type { Mapped } from '../release/mapped.js';

const MOST_NAMED = 3;

/** Those that are nearest to one in diameter and force, relative to its own; a line of the same name is no other line. */
export function nearest(lines: readonly Mapped[], slug: string): Mapped[] {
  const one = lines.find((line) => line.slug === slug);
  if (!one) return [];
  const distance = ({ force, diameter }: Mapped) => Math.hypot(force.value / one.force.value - 1, diameter.value / one.diameter.value - 1);
  return lines
    .filter(({ variant }) => variant.line.slug !== one.variant.line.slug)
    .toSorted((a, b) => distance(a) - distance(b))
    .slice(0, MOST_NAMED);
}
