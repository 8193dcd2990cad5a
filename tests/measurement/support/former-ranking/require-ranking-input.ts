import { requireProbability } from '../../../../api/measurement/distributions/require-domain.js';
import { MeasurementError } from '../../../../api/measurement/errors.js';
import type { MeasurementErrorCode } from '../../../../api/measurement/errors.js';
import { sourceNamed } from './evidence-of-submissions.js';
import type { RankingInput } from './ranking-input.js';
import { MOST_ENTRIES } from '../../../../api/measurement/ranking/sorted-places.js';

export const FEWEST_DRAWS = 10_000;

/**
 * Refuses an input that no ranking can be computed from.
 *
 * Formula: at most 4096 entries with ids of their own; categories with codes of their own; finite values; uncertainties ≥ 0; ν > 0; known sources; draws ≥ 10 000; 0 < level < 1
 * @param input what is to be ranked
 * @returns nothing
 * @throws MeasurementError 'ranking/too-many-entries', 'ranking/not-unique', 'ranking/bad-evidence', 'ranking/bad-weight', 'ranking/unknown-source', 'ranking/too-few-draws', 'distributions/out-of-domain'
 * @see JCGM-101
 * @example requireRankingInput(input)
 */
export function requireRankingInput(input: RankingInput): void {
  const { entries, categories, sources, draws = FEWEST_DRAWS, level = 0.95 } = input;
  requireProbability(level, 'rankWithUncertainty');
  if (!(Number.isInteger(draws) && draws >= FEWEST_DRAWS))
    refuse('ranking/too-few-draws', `found ${draws} draws, expected a whole number of at least ${FEWEST_DRAWS}. Draw more.`);
  if (entries.length > MOST_ENTRIES)
    refuse('ranking/too-many-entries', `found ${entries.length} entries, expected at most ${MOST_ENTRIES}. Split the edition.`);
  requireUnique(entries.map(({ id }) => id));
  requireUnique(categories.map(({ code }) => code));
  const badWeight = categories.find(({ weight }) => !/^\d+(\.\d{1,6})?$/.test(weight));
  if (badWeight)
    refuse(
      'ranking/bad-weight',
      `category ${badWeight.code} has weight "${badWeight.weight}", expected a decimal of 0 or more with at most 6 places.`,
    );
  Object.entries(sources).forEach(([name, source]) => requireSource(name, source));
  for (const { id, results } of entries) {
    for (const { code } of categories) {
      const evidence = results[code];
      if (evidence) requireEvidence(`entry ${id} in category ${code}`, evidence, sources);
    }
  }
}

function requireUnique(names: readonly string[]): void {
  const twice = names.find((name, i) => names.indexOf(name) !== i);
  if (twice !== undefined) refuse('ranking/not-unique', `"${twice}" is there twice, expected once. Merge its results.`);
}

function requireSource(name: string, { relativeStandardUncertainty, degreesOfFreedom }: RankingInput['sources'][string]): void {
  if (!(relativeStandardUncertainty >= 0 && relativeStandardUncertainty < Infinity && degreesOfFreedom > 0))
    refuse(
      'ranking/bad-evidence',
      `source ${name} has relative standard uncertainty ${relativeStandardUncertainty} with ${degreesOfFreedom} degrees of freedom, expected 0 or more with more than 0.`,
    );
}

function requireEvidence(
  where: string,
  { value, standardUncertainty, degreesOfFreedom, shared, without }: NonNullable<RankingInput['entries'][number]['results'][string]>,
  sources: RankingInput['sources'],
): void {
  const isKnown = standardUncertainty >= 0 && standardUncertainty < Infinity && degreesOfFreedom > 0;
  const isFinite = Number.isFinite(value) && shared.every(({ sensitivity }) => Number.isFinite(sensitivity));
  const isLeftFinite = Object.values(without).every((left) => left === null || Number.isFinite(left));
  if (!isKnown || !isFinite || !isLeftFinite)
    refuse(
      'ranking/bad-evidence',
      `${where}: found ${value} ± ${standardUncertainty} with ${degreesOfFreedom} degrees of freedom, expected finite numbers. Moderate the variances or leave the entry out.`,
    );
  for (const { source } of shared) sourceNamed(source, sources);
}

function refuse(code: MeasurementErrorCode, message: string): never {
  throw new MeasurementError(code, `rankWithUncertainty: ${message}`);
}
