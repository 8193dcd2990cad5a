import type { FittedSeries, ValuesOnly } from '../bench-model/fit-series.js';

/** A series that a value is made of: a force with power 1, a diameter with power −2. */
export interface EvidenceFactor {
  /** key of the series */
  readonly series: string;
  readonly variant: string;
  readonly power: number;
}

/** A value of one entry in one category, as a product of powers of values of fitted series. */
export interface ModelEvidence {
  /** above 0 [unit of the category] */
  readonly value: number;
  readonly factors: readonly EvidenceFactor[];
  /** party (a tester, a rig) → the value that is left without its submissions; null when none is left */
  readonly without: Readonly<Record<string, number | null>>;
}

/** Key → what the model found. */
export type ModelSeries = Readonly<Record<string, FittedSeries | ValuesOnly>>;
