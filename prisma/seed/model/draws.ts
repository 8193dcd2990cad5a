/**
 * Repeatable chance. Each thing draws from a stream of its own, named by what it is, so that adding a variant or a
 * season leaves every other number as it was. Generator: mulberry32 (T. Ettinger, public domain; from memory).
 */
export class Draws {
  private state: number;

  /** @param labels seed first, then what the numbers are for */
  constructor(...labels: readonly (string | number)[]) {
    this.state = fnv1a(labels.join('/'));
  }

  /** A number in [0, 1). */
  uniform(): number {
    this.state = (this.state + 0x6d2b79f5) >>> 0;
    let bits = Math.imul(this.state ^ (this.state >>> 15), this.state | 1);
    bits ^= bits + Math.imul(bits ^ (bits >>> 7), bits | 61);
    return ((bits ^ (bits >>> 14)) >>> 0) / 2 ** 32;
  }

  between(low: number, high: number): number {
    return low + (high - low) * this.uniform();
  }

  /** A whole number from 0 to below the limit. */
  below(limit: number): number {
    return Math.floor(this.uniform() * limit);
  }

  /** A draw from the normal distribution (Box–Muller), cut at three and a half standard deviations. */
  normal(mean: number, standardDeviation: number): number {
    const z = Math.sqrt(-2 * Math.log(1 - this.uniform())) * Math.cos(2 * Math.PI * this.uniform());
    return mean + standardDeviation * Math.max(-3.5, Math.min(3.5, z));
  }
}

/** FNV-1a, 32 bits (Fowler, Noll, Vo). */
function fnv1a(text: string): number {
  let hash = 0x811c9dc5;
  for (const character of text) hash = Math.imul(hash ^ (character.codePointAt(0) ?? 0), 0x01000193) >>> 0;
  return hash;
}
