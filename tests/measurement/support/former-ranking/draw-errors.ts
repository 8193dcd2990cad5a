import { tDeviate } from '../../../../api/measurement/random/t-deviate.js';
import type { RandomStream } from '../../../../api/measurement/random/random-stream.js';
import type { Evidence, SharedSource } from './evidence.js';
import { sourceNamed } from './evidence-of-submissions.js';

/** Drawn relative effects of every source, one array of draws each. */
export type DrawnSources = ReadonlyMap<string, Float64Array>;

/**
 * Draws the effect of each source once per draw, so that all values that share it move together.
 *
 * Formula: η = u·t(ν)
 * @param sources known shared effects by name
 * @param draws B [1]
 * @param random seeded stream; sources are drawn in the order of their names
 * @returns B relative effects of each source [1]
 * @throws nothing: the caller checks the sources
 * @see JCGM-101
 * @example drawSources({ 'rig:r1': { relativeStandardUncertainty: 0.01, degreesOfFreedom: Infinity } }, 10_000, random)
 */
export function drawSources(sources: Readonly<Record<string, SharedSource>>, draws: number, random: RandomStream): DrawnSources {
  return new Map(
    Object.keys(sources)
      .sort()
      .map((name) => {
        const { relativeStandardUncertainty, degreesOfFreedom } = sourceNamed(name, sources);
        const effects = new Float64Array(draws);
        for (let draw = 0; draw < draws; draw++) effects[draw] = relativeStandardUncertainty * tDeviate(random, degreesOfFreedom);
        return [name, effects];
      }),
  );
}

/**
 * Draws how far the value of each entry may lie from the truth.
 *
 * Formula: e = u·t(ν) + x·Σ sensitivity·η
 * @param evidence of n entries [any one unit]
 * @param sources drawn effects, B of each
 * @param draws B [1]
 * @param random seeded stream; entries are drawn in the order given
 * @returns B·n deviations, draw by draw [same unit]
 * @throws nothing: the caller checks the evidence
 * @see JCGM-101
 * @example drawErrors([evidence], drawnSources, 10_000, random)
 */
export function drawErrors(evidence: readonly Evidence[], sources: DrawnSources, draws: number, random: RandomStream): Float64Array {
  const n = evidence.length;
  const errors = new Float64Array(draws * n);
  evidence.forEach(({ value, standardUncertainty, degreesOfFreedom, shared }, i) => {
    if (standardUncertainty > 0) {
      for (let at = i; at < errors.length; at += n) errors[at] = standardUncertainty * tDeviate(random, degreesOfFreedom);
    }
    for (const { source, sensitivity } of shared) {
      const effects = sources.get(source)!;
      const scale = value * sensitivity;
      for (let draw = 0; draw < draws; draw++) errors[draw * n + i] = errors[draw * n + i]! + scale * effects[draw]!;
    }
  });
  return errors;
}

/**
 * Standard uncertainty of the difference of every two entries; what they share cancels.
 *
 * Formula: s_ij² = u_i² + u_j² + Σ_k ((x_i·a_ik − x_j·a_jk)·u_k)²
 * @param evidence of n entries [any one unit]
 * @param sources known shared effects by name
 * @returns n·n: s_ij at i·n + j [same unit]
 * @throws nothing: the caller checks the evidence
 * @see JCGM-100 5.2
 * @example differenceUncertainties([a, b], {}) // [0, 5, 5, 0]
 */
export function differenceUncertainties(evidence: readonly Evidence[], sources: Readonly<Record<string, SharedSource>>): Float64Array {
  const n = evidence.length;
  const names = [...new Set(evidence.flatMap(({ shared }) => shared.map(({ source }) => source)))];
  const loads = new Float64Array(n * names.length);
  evidence.forEach(({ value, shared }, i) => {
    for (const { source, sensitivity } of shared) {
      const at = i * names.length + names.indexOf(source);
      loads[at] = loads[at]! + value * sensitivity * sourceNamed(source, sources).relativeStandardUncertainty;
    }
  });
  const result = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < i; j++) {
      let variance = evidence[i]!.standardUncertainty ** 2 + evidence[j]!.standardUncertainty ** 2;
      for (let k = 0; k < names.length; k++) variance += (loads[i * names.length + k]! - loads[j * names.length + k]!) ** 2;
      result[i * n + j] = result[j * n + i] = Math.sqrt(variance);
    }
  }
  return result;
}
