import { chartsOf } from './control-charts.js';
import { rigEffectOf } from './rig-effect.js';
import { testerEffectOf } from './tester-effect.js';
import type { EditionEvidence } from '../evidence/edition-evidence.js';
import type { CauseEffects, EffectsEvidence, KnownEffect } from '../evidence/effects-evidence.js';
import { keyOf } from '../results/quantity.js';
import type { PinnedMethod } from '../results/quantity.js';

const PLACES = 6;

/**
 * What is known of rigs and testers beside the edition's own results: as stated, else, of rigs, as their control pulls tell, of testers,
 * as round robins on one rig tell. Such pulls name a method and no series: they speak for a method that has one series of forces. Pure.
 */
export function knownEffects(
  { controlPulls = [], roundRobins = [], effects = {} }: Pick<EditionEvidence, 'controlPulls' | 'roundRobins' | 'effects'>,
  methods: readonly PinnedMethod[],
): EffectsEvidence {
  const charts = chartsOf(controlPulls);
  const told = methods.flatMap(({ slug: method, series }): [string, CauseEffects][] => {
    const [force, ...others] = series.filter(({ kind }) => kind === 'breakingForce');
    if (!force || others.length > 0) return [];
    const key = keyOf({ quantity: 'breakingForce', method, series: force.code, section: null });
    const rig = stated(rigEffectOf(charts, method), 'controlPulls');
    const tester = stated(testerEffectOf(roundRobins, method), 'roundRobin');
    return rig || tester ? [[key, { ...(rig ? { rig } : {}), ...(tester ? { tester } : {}), ...effects[key] }]] : [];
  });
  return { ...effects, ...Object.fromEntries(told) };
}

const stated = (
  told: { readonly relativeSd: number; readonly degreesOfFreedom: number } | null,
  source: KnownEffect['source'],
): KnownEffect | null => told && { relativeSd: told.relativeSd.toFixed(PLACES), degreesOfFreedom: told.degreesOfFreedom, source };
