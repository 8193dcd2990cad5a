/** Repeatable draws: the same seed gives the same season on every machine (mulberry32 by T. Ettinger, public domain; from memory). */
export class Draws {
  private state: number;

  constructor(seed: number) {
    this.state = seed >>> 0;
  }

  /** A number in [0, 1). */
  uniform(): number {
    this.state = (this.state + 0x6d2b79f5) >>> 0;
    let bits = Math.imul(this.state ^ (this.state >>> 15), this.state | 1);
    bits ^= bits + Math.imul(bits ^ (bits >>> 7), bits | 61);
    return ((bits ^ (bits >>> 14)) >>> 0) / 2 ** 32;
  }

  /** A draw from the normal distribution (Box–Muller). */
  normal(mean: number, standardDeviation: number): number {
    const radius = Math.sqrt(-2 * Math.log(1 - this.uniform()));
    return mean + standardDeviation * radius * Math.cos(2 * Math.PI * this.uniform());
  }

  pick<T>(list: readonly T[]): T {
    const picked = list[Math.floor(this.uniform() * list.length)];
    if (picked === undefined) throw new Error('Nothing to pick from: the list is empty; give at least one item.');
    return picked;
  }
}
