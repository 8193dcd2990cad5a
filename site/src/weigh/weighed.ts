import type { Combination } from '../../../api/measurement/ranking/places/overall-scores.js';

/** A division as its reader may weigh it: published figures, and how the published score puts them together. */
export interface Weighed {
  /** Slug of the division; empty where the edition is not divided. */
  readonly division: string;
  readonly name: string;
  /** The published order. */
  readonly href: string;
  readonly combine: Combination;
  readonly tieBreak: 'none' | 'mostFirsts';
  /** Digest of the release, hexadecimal; seeds the draws, so that the same address shows the same chances. */
  readonly digest: string;
  readonly categories: readonly WeighedCategory[];
  /** Those with a place overall, best first. */
  readonly lines: readonly WeighedLine[];
}

export interface WeighedCategory {
  readonly code: string;
  readonly name: string;
  readonly direction: 'more' | 'less';
  /** Weight in the published score, a decimal. */
  readonly weight: string;
}

export interface WeighedLine {
  readonly slug: string;
  readonly name: string;
  /** What its name begins with; empty where the line's own name says whose it is. */
  readonly maker: string;
  readonly href: string;
  readonly place: number;
  /** In the order of the categories. */
  readonly results: readonly {
    /** Place that the published score counts. */
    readonly place: number;
    readonly value: string;
    /** Ends of the 95 % interval; null where none is stated. */
    readonly low: string | null;
    readonly high: string | null;
  }[];
}
