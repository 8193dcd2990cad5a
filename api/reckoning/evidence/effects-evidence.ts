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

/** Key of a measured quantity → how well spreads of each cause agree with what an edition found of it: plain JSON, decimals as text. */
export type SpreadsEvidence = Readonly<
  Record<
    string,
    readonly {
      readonly cause: 'rig' | 'tester' | 'submission';
      /** Likelihood over what was to be expected before the edition; 0 beyond either end. */
      readonly points: readonly { readonly relativeSd: string; readonly likelihood: string }[];
    }[]
  >
>;

/** Key of a measured quantity, such as breakingForce/straight-pull/untreated → its effects. */
export type EffectsEvidence = Readonly<Record<string, CauseEffects>>;
