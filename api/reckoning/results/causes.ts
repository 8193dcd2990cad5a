/** What submissions of one variant differ by beyond repeatability, given to its causes. Pure. */
import type { SharedSource } from '../../measurement/ranking/evidence.js';
import type { CauseEffects, KnownEffect } from '../evidence/effects-evidence.js';

export interface Causes {
  readonly rig: SharedSource;
  readonly tester: SharedSource;
}

interface Between {
  readonly relativeVariance: number;
  readonly degreesOfFreedom: number;
}

/**
 * An effect that control pulls or a round robin tell is taken as told; the other cause gets what is then left of the variance
 * between submissions. Where neither is told each has half (common practice; nothing in a season tells them apart); in a ratio of
 * two pulls on one rig the rig cancels, and the tester has all that is not told.
 */
export function causesOf(between: Between, { rig, tester }: CauseEffects, isRatio: boolean): Causes {
  const whole = between.relativeVariance;
  const left = (known: KnownEffect): number => Math.max(0, whole - Number(known.relativeSd) ** 2);
  const shared = (relativeVariance: number): SharedSource => ({
    relativeStandardUncertainty: Math.sqrt(relativeVariance),
    degreesOfFreedom: between.degreesOfFreedom || Infinity,
  });
  if (isRatio) return { rig: shared(0), tester: tester ? told(tester) : shared(whole) };
  return {
    rig: rig ? told(rig) : shared(tester ? left(tester) : whole / 2),
    tester: tester ? told(tester) : shared(rig ? left(rig) : whole / 2),
  };
}

const told = ({ relativeSd, degreesOfFreedom }: KnownEffect): SharedSource => ({
  relativeStandardUncertainty: Number(relativeSd),
  degreesOfFreedom,
});
