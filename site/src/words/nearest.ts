import type { Mapped } from '../release/mapped.js';

const MOST_NAMED = 3;
const MOST_OF_LINE = 12;

/** Those of other lines that are nearest to one in diameter and force, relative to its own. */
export const nearest = (lines: readonly Mapped[], slug: string): Mapped[] =>
  nearestOf(lines, slug, MOST_NAMED, (line, own) => line !== own);

/** Of the other variants of its line the nearest, where these are very many: no page grows with its line. */
export function nearestOfLine<Name extends { readonly slug: string }>(
  others: readonly Name[],
  lines: readonly Mapped[],
  slug: string,
): readonly Name[] {
  if (others.length <= MOST_OF_LINE) return others;
  const near = nearestOf(lines, slug, MOST_OF_LINE, (line, own) => line === own);
  // Those that nobody measured come after the nearest.
  const named = new Set([...new Set([...near, ...others].map((one) => one.slug))].slice(0, MOST_OF_LINE));
  return others.filter((one) => named.has(one.slug));
}

function nearestOf(lines: readonly Mapped[], slug: string, most: number, isMeant: (line: string, own: string) => boolean): Mapped[] {
  const one = lines.find((line) => line.slug === slug);
  if (!one) return [];
  const distance = ({ force, diameter }: Mapped) => Math.hypot(force.value / one.force.value - 1, diameter.value / one.diameter.value - 1);
  const near: { line: Mapped; away: number }[] = [];
  // Each page asks this of all lines: nothing is sorted but those that are nearer than the last.
  for (const line of lines) {
    if (line === one || !isMeant(line.variant.line.slug, one.variant.line.slug)) continue;
    const away = distance(line);
    if (near.length === most && away >= (near.at(-1)?.away ?? 0)) continue;
    near.push({ line, away });
    near.sort((a, b) => a.away - b.away);
    near.splice(most);
  }
  return near.map(({ line }) => line);
}
