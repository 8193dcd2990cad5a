/** A mean with its standard uncertainty. */
export interface MeanWithUncertainty {
  readonly mean: number;
  readonly standardUncertainty: number;
}

export interface Consensus {
  readonly mean: number;
  /** between-submission variance τ² */
  readonly betweenVariance: number;
  readonly standardError: number;
}
