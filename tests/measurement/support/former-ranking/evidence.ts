/** What one source of shared effects (a rig, a tester in a category, a certificate) may be off by; one effect for all that used it. */
export interface SharedSource {
  /** relative standard uncertainty of its effect [1] */
  readonly relativeStandardUncertainty: number;
  /** Infinity when it is known and not estimated */
  readonly degreesOfFreedom: number;
}

/** How a value answers to a source: relative change of the value per relative effect, 1 for a force, −2 for a section's diameter. */
export interface SharedEffect {
  readonly source: string;
  readonly sensitivity: number;
}

/** A value of one entry in one category, with what is its own uncertainty and what it shares with others. */
export interface Evidence {
  readonly value: number;
  /** repeatability and whatever else no other value shares [unit of the value] */
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
  readonly shared: readonly SharedEffect[];
  /** party (a tester, a rig) → the value that is left without its submissions; null when none is left */
  readonly without: Readonly<Record<string, number | null>>;
}

/** One submission's mean as a part of an entry's evidence. */
export interface SubmissionEvidence {
  readonly value: number;
  /** above 0; moderated, so that one specimen has one too [unit of the value] */
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
  readonly shared: readonly SharedEffect[];
  /** who and what made it, for example ['tester:t1', 'rig:r2'] */
  readonly parties: readonly string[];
}
