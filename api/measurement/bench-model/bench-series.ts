/** What may differ between two submissions of one variant: the rig, the tester, and this spool on this day. */
export const CAUSES = ['rig', 'tester', 'submission'] as const;
export type Cause = (typeof CAUSES)[number];

/** A certificate's effect, shared by all that it covers. */
export interface Certificate {
  readonly name: string;
  readonly relativeStandardUncertainty: number;
}

/** One submission's mean in one series. */
export interface BenchSubmission {
  readonly variant: string;
  /** above 0 as a mean over its variant [any one unit] */
  readonly value: number;
  /** moderated repeatability of the mean, relative and squared [1] */
  readonly relativeVariance: number;
  readonly degreesOfFreedom: number;
  /** null where it cancels, as in a retention */
  readonly rig: string | null;
  readonly tester: string;
  readonly certificates: readonly Certificate[];
}

/** A cause's relative standard deviation as control pulls, round robins, re-tests or earlier editions found it. */
export interface ToldSpread {
  readonly cause: Cause;
  readonly relativeSd: number;
  readonly degreesOfFreedom: number;
}

/** How well relative standard deviations of a cause agree with what an earlier season, or re-tests, found: its likelihood over what was to be expected before it; 0 beyond either end. */
export interface SeasonTold {
  readonly cause: Cause;
  /** rising in the standard deviation [1] */
  readonly points: readonly { readonly relativeSd: number; readonly likelihood: number }[];
}

export interface BenchSeries {
  readonly submissions: readonly BenchSubmission[];
  /** relative reproducibility that the method states: rig, tester and submission together [1]; null where it states none */
  readonly reproducibility: number | null;
  readonly told: readonly ToldSpread[];
  /** what earlier seasons of the house, and re-tests, tell */
  readonly earlier?: readonly SeasonTold[];
}

/** Relative standard deviations of the causes [1]. */
export type Spreads = Readonly<Record<Cause, number>>;
