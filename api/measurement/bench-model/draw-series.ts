import { tDeviate } from '../random/t-deviate.js';
import type { RandomStream } from '../random/random-stream.js';
import type { Atom, FittedSeries } from './fit-series.js';
import type { OwnTail } from './own-tail.js';
import { ownTail } from './own-tail.js';

/**
 * Draws how far the truth may lie from each value of a series.
 *
 * Formula: one set of spreads a draw; then b = b̂ + Fz for the shared effects, and β = β̃ − A·b + u·t(ν) for each variant; the draw is β less the published mean
 * @param fit fitted series of n variants
 * @param draws B [1]
 * @param random seeded stream
 * @returns B·n deviations relative to the values, draw by draw [1]
 * @throws nothing
 * @see JCGM-101
 * @example drawSeries(fit, 10, random).length // 20
 */
export function drawSeries(fit: FittedSeries, draws: number, random: RandomStream): Float64Array {
  const n = fit.means.length;
  const errors = new Float64Array(draws * n);
  const ofAtom = drawnAtoms(fit, draws, random);
  fit.atoms.forEach((atom, at) => {
    const drawn = ofAtom[at]!;
    if (drawn.length > 0) drawAtom(fit, atom, drawn, errors, random);
  });
  return errors;
}

/** Which draws take which set of spreads: by chance, so that draws of two series go together by none. */
function drawnAtoms({ atoms, atomCount }: FittedSeries, draws: number, random: RandomStream): number[][] {
  const owner = atoms.flatMap(({ count }, at) => Array.from({ length: count }, () => at));
  const result: number[][] = atoms.map(() => []);
  for (let draw = 0; draw < draws; draw++) result[owner[Math.floor(random.nextUniform() * atomCount)]!]!.push(draw);
  return result;
}

function drawAtom(fit: FittedSeries, atom: Atom, drawn: readonly number[], errors: Float64Array, random: RandomStream): void {
  const { starts, columns, columnStarts, columnOf } = fit.design;
  const { factor } = atom;
  const { shares } = atom.level;
  const [n, k] = [fit.means.length, columns.length];
  const { sds, degreesOfFreedom } = sdsOf(ownTail(fit, atom));
  const z = new Float64Array(k);
  const b = new Float64Array(k);
  const shift = atom.means.map((mean, v) => mean - fit.means[v]!);
  const scale = fit.means.map((mean) => 1 / (1 + mean));
  for (const draw of drawn) {
    for (let i = 0; i < k; i++) z[i] = tDeviate(random, Infinity);
    for (let i = 0; i < k; i++) {
      let sum = 0;
      for (let j = i; j < k; j++) sum += factor[i * k + j]! * z[j]!;
      b[i] = sum;
    }
    const from = draw * n;
    for (let v = 0; v < n; v++) {
      let error = shift[v]! + sds[v]! * tDeviate(random, degreesOfFreedom[v]!);
      for (let s = starts[v]!; s < starts[v + 1]!; s++) {
        let effect = 0;
        for (let a = columnStarts[s]!; a < columnStarts[s + 1]!; a++) effect += b[columnOf[a]!]!;
        error -= shares[s]! * effect;
      }
      errors[from + v] = error * scale[v]!;
    }
  }
}

const sdsOf = ({ variance, degreesOfFreedom }: OwnTail) => ({ sds: variance.map(Math.sqrt), degreesOfFreedom });
