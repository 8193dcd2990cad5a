/** How many of the largest of B draws lie at or above their quantile: B − ⌈level·(B + 1)⌉ + 1, at least 1 [1]. */
export const tailOfDraws = (draws: number, level: number): number => Math.max(1, draws - Math.ceil(level * (draws + 1)) + 1);

/** The largest numbers seen so far, as a heap with the smallest of them on top; all at a floor at first. */
export class LargestSeen {
  private readonly heap: Float64Array;

  constructor(size: number, floor = 0) {
    this.heap = new Float64Array(size).fill(floor);
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
