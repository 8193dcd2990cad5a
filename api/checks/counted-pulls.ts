import type { SpecimenInSi } from '../readings/readings-si.js';

export interface CountedPull {
  /** Number of the specimen. */
  readonly number: number;
  readonly forceN: number;
}

/** Breaking forces of the valid specimens, a list for each condition, in the order of their numbers. */
export function countedPulls(specimens: readonly SpecimenInSi[]): CountedPull[][] {
  return (['untreated', 'treated'] as const).map((condition) =>
    specimens
      .filter((specimen) => specimen.state === 'valid' && specimen.condition === condition)
      .flatMap(({ number, readings }) =>
        readings.filter(({ role }) => role === 'breakingForce').map(({ valueSi }) => ({ number, forceN: Number(valueSi) })),
      )
      .sort((one, other) => one.number - other.number),
  );
}
