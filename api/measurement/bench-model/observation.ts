/** The mean of one submission, as the model of the bench sees it. */
export interface BenchObservation {
  readonly variant: string;
  /** mean of the submission's specimens, above 0 [any one unit] */
  readonly value: number;
  /** relative variance of that mean from repeatability, moderated, above 0 [1] */
  readonly relativeVariance: number;
  /** of that variance; Infinity when it is known and not estimated */
  readonly degreesOfFreedom: number;
  /** null where the rig cancels, as in a ratio of two pulls on it */
  readonly rig: string | null;
  readonly tester: string;
  /** certificate of the instrument with its relative standard uncertainty [1]; null without one */
  readonly certificate: { readonly name: string; readonly relativeStandardUncertainty: number } | null;
}

/** What rigs, testers and submissions differ by, told from elsewhere: control pulls, round robins, re-tests, earlier editions. */
export interface ToldSpread {
  /** relative standard deviation [1] */
  readonly relativeSd: number;
  readonly degreesOfFreedom: number;
}

/** Causes whose spread the model learns. */
export const CAUSES = ['rig', 'tester', 'submission'] as const;
export type Cause = (typeof CAUSES)[number];
