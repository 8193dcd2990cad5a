import type { SpecimenInSi } from '../readings/readings-si.js';

/** Conditions that were tested and of which fewer specimens are valid than there should be. */
export function fewerThan(least: number, specimens: readonly SpecimenInSi[]): { condition: string; valid: number }[] {
  const conditions = [...Map.groupBy(specimens, ({ condition }) => condition)];
  return conditions
    .map(([condition, own]) => ({ condition, valid: own.filter(({ state }) => state === 'valid').length }))
    .filter(({ valid }) => valid < least);
}
