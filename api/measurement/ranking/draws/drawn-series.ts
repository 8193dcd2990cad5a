import { drawSeries } from '../../bench-model/draw-series.js';
import type { RandomStream } from '../../random/random-stream.js';
import type { ModelSeries } from '../model-evidence.js';
import type { ModelEntry } from '../model-ranking.js';
import type { RankedCategory } from '../ranking-input.js';

/**
 * Draws of every fitted series, kept to seven digits, half as large: they wait until their categories come.
 *
 * Formula: as `drawSeries`
 * @param series fitted series by key; drawn in the order of their keys
 * @param draws B [1]
 * @param random seeded stream
 * @returns B·m deviations relative to the values of each series, by key [1]
 * @throws nothing
 * @see JCGM-101
 * @example drawEverySeries({ force: fit }, 10, random).size // 1
 */
export function drawEverySeries(series: ModelSeries, draws: number, random: RandomStream): Map<string, Float32Array> {
  const drawn = new Map<string, Float32Array>();
  for (const key of Object.keys(series).sort()) {
    const fit = series[key]!;
    if (fit.kind === 'fitted') drawn.set(key, new Float32Array(drawSeries(fit, draws, random)));
  }
  return drawn;
}

/**
 * Lets go of the draws that no further category is made of: they are large.
 *
 * Formula: none
 * @param drawn draws by series, those that are not needed leave it
 * @param categories still to come
 * @param entries with what their values are made of
 * @returns nothing
 * @throws nothing
 * @see COMMON-PRACTICE
 * @example forgetDrawn(new Map(), [], [])
 */
export function forgetDrawn(
  drawn: Map<string, Float32Array>,
  categories: readonly Pick<RankedCategory, 'code'>[],
  entries: readonly ModelEntry[],
): void {
  const needed = new Set(
    categories.flatMap(({ code }) => entries.flatMap(({ results }) => results[code]?.factors.map(({ series }) => series) ?? [])),
  );
  for (const key of drawn.keys()) if (!needed.has(key)) drawn.delete(key);
}
