/** An effect that is known from elsewhere than the edition's own results: plain JSON, decimals as text. */
export interface KnownEffect {
  /** Relative standard deviation of the effect, one part of the whole [1]. */
  readonly relativeSd: string;
  readonly degreesOfFreedom: number;
  /** What tells it. */
  readonly source: 'controlPulls' | 'roundRobin';
}

/** What rigs and testers are known to add to a measured quantity; what is not told stays a share of what submissions differ by. */
export interface CauseEffects {
  readonly rig?: KnownEffect | undefined;
  readonly tester?: KnownEffect | undefined;
}

/** Key of a measured quantity, such as breakingForce/straight-pull/untreated → its effects. */
export type EffectsEvidence = Readonly<Record<string, CauseEffects>>;
