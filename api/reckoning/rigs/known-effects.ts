import { chartsOf } from './control-charts.js';
import { rigEffectOf } from './rig-effect.js';
import { testerEffectOf } from './tester-effect.js';
import type { EditionEvidence } from '../evidence/edition-evidence.js';
import type { EffectsEvidence, KnownEffect } from '../evidence/effects-evidence.js';

const PLACES = 6;

/**
 * What is known of rigs and testers beside the edition's own results: as stated, else, of rigs, as their straight pulls on the control
 * line tell, of testers, as round robins on one rig tell. Pure.
 */
export function knownEffects({
  controlPulls = [],
  roundRobins = [],
  effects = {},
}: Pick<EditionEvidence, 'controlPulls' | 'roundRobins' | 'effects'>): EffectsEvidence {
  const rig = stated(rigEffectOf(chartsOf(controlPulls), 'straight-pull'), 'controlPulls');
  const tester = stated(testerEffectOf(roundRobins, 'straight-pull'), 'roundRobin');
  if (!rig && !tester) return effects;
  return { ...effects, breakingForce: { ...(rig ? { rig } : {}), ...(tester ? { tester } : {}), ...effects['breakingForce'] } };
}

const stated = (
  told: { readonly relativeSd: number; readonly degreesOfFreedom: number } | null,
  source: KnownEffect['source'],
): KnownEffect | null => told && { relativeSd: told.relativeSd.toFixed(PLACES), degreesOfFreedom: told.degreesOfFreedom, source };
