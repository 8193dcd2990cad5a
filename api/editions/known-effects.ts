import { chartsOf } from '../control-pulls/control-charts.js';
import { rigEffectOf } from '../control-pulls/rig-effect.js';
import type { EditionEvidence } from './edition-evidence.js';
import type { EffectsEvidence } from './effects-evidence.js';

const PLACES = 6;

/** What is known of rigs and testers beside the edition's own results: as stated, else, of rigs, as their straight pulls on the control line tell. Pure. */
export function knownEffects({ controlPulls = [], effects = {} }: Pick<EditionEvidence, 'controlPulls' | 'effects'>): EffectsEvidence {
  const told = rigEffectOf(chartsOf(controlPulls), 'straight-pull');
  if (!told) return effects;
  const rig = {
    relativeSd: told.relativeSd.toFixed(PLACES),
    degreesOfFreedom: told.degreesOfFreedom,
    source: 'controlPulls' as const,
  };
  return { ...effects, breakingForce: { rig, ...effects['breakingForce'] } };
}
