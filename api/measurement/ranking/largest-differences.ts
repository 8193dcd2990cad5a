/**
 * Quantile of the largest standardised difference of draws over a set of ordered pairs.
 *
 * Formula: T_b = max over pairs (i, j) of (e_bi − e_bj)/s_ij; the ⌈level·(B + 1)⌉-th smallest of the B largest. Only the upper tail is kept, so a pair is looked
 * at only where it could rise above the tail: the result is that of looking at all
 * @param errors B·n drawn deviations, draw by draw [any one unit]
 * @param precision n·n: 1/s_ij at i·n + j, 0 for a pair that is left out [1/unit]
 * @param n number of entries [1]
 * @param level in (0, 1) [1]
 * @returns quantile, 0 or more [1]
 * @throws nothing: the caller checks the shapes
 * @see ROMANO-WOLF-2005
 * @example largestDifferenceQuantile(Float64Array.of(1, 0), Float64Array.of(0, 1, 1, 0), 2, 0.5) // 1
 */
export function largestDifferenceQuantile(errors: Float64Array, precision: Float64Array, n: number, level: number): number {
  const draws = errors.length / n;
  const tail = new Tail(Math.max(1, draws - Math.ceil(level * (draws + 1)) + 1));
  const finest = finestPrecisions(precision, n);
  const ahead = new Uint16Array(n);
  const behind = new Uint16Array(n);
  for (let draw = 0; draw < draws; draw++) {
    const e = errors.subarray(draw * n, (draw + 1) * n);
    tail.add(largestAbove(tail.smallest, e, precision, finest, ahead, behind));
  }
  return tail.smallest;
}

interface FinestPrecisions {
  readonly asFirst: Float64Array;
  readonly asSecond: Float64Array;
}

function finestPrecisions(precision: Float64Array, n: number): FinestPrecisions {
  const asFirst = new Float64Array(n);
  const asSecond = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      const p = precision[i * n + j]!;
      if (p > asFirst[i]!) asFirst[i] = p;
      if (p > asSecond[j]!) asSecond[j] = p;
    }
  }
  return { asFirst, asSecond };
}

/** Largest standardised difference of one draw when it is above the floor, else the floor. */
function largestAbove(
  floor: number,
  e: Float64Array,
  precision: Float64Array,
  { asFirst, asSecond }: FinestPrecisions,
  ahead: Uint16Array,
  behind: Uint16Array,
): number {
  const n = e.length;
  let [low, high] = [Infinity, -Infinity];
  for (let i = 0; i < n; i++) {
    const value = e[i]!;
    if (value < low) low = value;
    if (value > high) high = value;
  }
  let [firsts, seconds] = [0, 0];
  for (let i = 0; i < n; i++) {
    if ((e[i]! - low) * asFirst[i]! > floor) ahead[firsts++] = i;
    if ((high - e[i]!) * asSecond[i]! > floor) behind[seconds++] = i;
  }
  let largest = floor;
  for (let a = 0; a < firsts; a++) {
    const i = ahead[a]!;
    const value = e[i]!;
    if ((value - low) * asFirst[i]! <= largest) continue;
    for (let b = 0; b < seconds; b++) {
      const j = behind[b]!;
      const t = (value - e[j]!) * precision[i * n + j]!;
      if (t > largest) largest = t;
    }
  }
  return largest;
}

/** The largest numbers seen so far, as a heap with the smallest of them on top. */
class Tail {
  private readonly heap: Float64Array;

  constructor(size: number) {
    this.heap = new Float64Array(size);
  }

  get smallest(): number {
    return this.heap[0]!;
  }

  add(value: number): void {
    const { heap } = this;
    if (value <= heap[0]!) return;
    let at = 0;
    for (;;) {
      let child = 2 * at + 1;
      if (child >= heap.length) break;
      if (child + 1 < heap.length && heap[child + 1]! < heap[child]!) child += 1;
      if (heap[child]! >= value) break;
      heap[at] = heap[child]!;
      at = child;
    }
    heap[at] = value;
  }
}
