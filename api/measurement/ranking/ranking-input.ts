import type { Direction } from './places/competition-places.js';
import type { Combination } from './places/overall-scores.js';

export interface RankedCategory {
  readonly code: string;
  readonly direction: Direction;
  /** a decimal, as the scheme states it */
  readonly weight: string;
  /** decimals that its values are published at */
  readonly places: number;
}

/** What is ranked, how it is put together, and how it is drawn. */
export interface RankingRules {
  /** SHA-256 digest of the inputs; seeds the draws, so that nobody can choose them */
  readonly digest: string;
  readonly categories: readonly RankedCategory[];
  readonly combine: Combination;
  readonly countPlaces: 'beforeExclusions' | 'afterExclusions';
  readonly tieBreak: 'none' | 'mostFirsts';
  /** at least 10 000, the default */
  readonly draws?: number;
  /** joint level of the place intervals, 0.95 by default */
  readonly level?: number;
}
