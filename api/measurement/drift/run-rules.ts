import type { ControlLimits } from './individuals-chart.js';

/** Western Electric's four zone rules, and three that other sources add. */
export type RunRule =
  | 'oneBeyond3Sigma'
  | 'twoOfThreeBeyond2Sigma'
  | 'fourOfFiveBeyond1Sigma'
  | 'eightOnOneSide'
  | 'nineOnOneSide'
  | 'sixTrending'
  | 'fourteenAlternating';

export const WESTERN_ELECTRIC_RULES: readonly RunRule[] = [
  'oneBeyond3Sigma',
  'twoOfThreeBeyond2Sigma',
  'fourOfFiveBeyond1Sigma',
  'eightOnOneSide',
];

/**
 * Rules that signal at one point of a chart; the point itself must take part in what is seen.
 *
 * Formula: with z = (x − centre)/σ, on one and the same side, strictly: 1 beyond 3; 2 of the last 3 beyond 2; 4 of 5 beyond 1; 8 (Nelson: 9) in a row; 6 rising or falling; 14 up and down by turns
 * @param values points up to and including the one judged, in order [any one unit]
 * @param limits centre and sigma [same unit]; with sigma 0 every point off the centre is beyond 3
 * @param rules which rules to apply; Western Electric's four by default
 * @returns names of the rules that signal at the last point; none for no points
 * @throws nothing
 * @see WESTERN-ELECTRIC
 * @see NELSON-1984
 * @example runRules([0.2, 3.1], { centre: 0, sigma: 1 }) // ['oneBeyond3Sigma']
 */
export function runRules(values: readonly number[], limits: ControlLimits, rules: readonly RunRule[] = WESTERN_ELECTRIC_RULES): RunRule[] {
  const z = values.map((value) => (value - limits.centre) / limits.sigma);
  return rules.filter((rule) => SIGNALS[rule](z));
}

const SIGNALS: Readonly<Record<RunRule, (z: readonly number[]) => boolean>> = {
  oneBeyond3Sigma: (z) => countBeyond(z, 1, 1, 3),
  twoOfThreeBeyond2Sigma: (z) => countBeyond(z, 2, 3, 2),
  fourOfFiveBeyond1Sigma: (z) => countBeyond(z, 4, 5, 1),
  eightOnOneSide: (z) => countBeyond(z, 8, 8, 0),
  nineOnOneSide: (z) => countBeyond(z, 9, 9, 0),
  sixTrending: (z) => isTrending(z.slice(-6), 6),
  fourteenAlternating: (z) => isAlternating(z.slice(-14)),
};

function countBeyond(z: readonly number[], atLeast: number, of: number, sigmas: number): boolean {
  const last = z.at(-1) ?? 0;
  const side = Math.sign(last);
  return last * side > sigmas && z.slice(-of).filter((value) => value * side > sigmas).length >= atLeast;
}

function isTrending(z: readonly number[], length: number): boolean {
  const steps = z.slice(1).map((value, i) => Math.sign(value - z[i]!));
  return steps.length === length - 1 && steps[0] !== 0 && steps.every((step) => step === steps[0]);
}

function isAlternating(z: readonly number[]): boolean {
  const steps = z.slice(1).map((value, i) => Math.sign(value - z[i]!));
  return steps.length === 13 && steps[0] !== 0 && steps.every((step, i) => i === 0 || step === -steps[i - 1]!);
}
