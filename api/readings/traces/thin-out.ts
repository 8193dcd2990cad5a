import type { Sample } from './trace-figures.js';

const MOST_POINTS = 64;

/**
 * The course of a trace in at most 64 points: lowest and highest force of each stretch, in their order, so that peaks and slips stay.
 * @param samples in the order they were taken
 */
export function thinOut(samples: readonly Sample[]): Sample[] {
  if (samples.length <= MOST_POINTS) return samples.map(shown);
  const stretches = (MOST_POINTS - 2) / 2;
  const inner = samples.slice(1, -1);
  const kept = Array.from({ length: stretches }, (_, i) =>
    inner.slice(Math.floor((i * inner.length) / stretches), Math.floor(((i + 1) * inner.length) / stretches)),
  ).flatMap(extremesOf);
  return [samples[0], ...kept, samples.at(-1)].flatMap((sample) => (sample ? [shown(sample)] : []));
}

/** To a micrometre or a millisecond, and ten millinewtons. */
const shown = ([at, forceN]: Sample): Sample => [Number(at.toFixed(3)), Number(forceN.toFixed(2))];

function extremesOf(stretch: readonly Sample[]): Sample[] {
  let [low, high] = [0, 0];
  stretch.forEach(([, forceN], i) => {
    if (forceN < (stretch[low]?.[1] ?? 0)) low = i;
    if (forceN > (stretch[high]?.[1] ?? 0)) high = i;
  });
  const places = low === high ? [low] : low < high ? [low, high] : [high, low];
  return places.flatMap((place) => (stretch[place] ? [stretch[place]] : []));
}
