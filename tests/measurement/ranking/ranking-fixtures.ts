import type { Evidence } from '../support/former-ranking/evidence.js';
import type { RankingInput } from '../support/former-ranking/ranking-input.js';

export const DIGEST = '9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08'; // SHA-256 of "test"

/** A value with an uncertainty of its own that is known, sharing nothing. */
export const known = (value: number, standardUncertainty: number, more: Partial<Evidence> = {}): Evidence => ({
  value,
  standardUncertainty,
  degreesOfFreedom: Infinity,
  shared: [],
  without: {},
  ...more,
});

export const idOf = (i: number): string => `e${String(i + 1).padStart(3, '0')}`;

/** An input of categories by code, each with the evidence of all entries. */
export function inputOf(columns: Record<string, readonly (Evidence | null)[]>, rules: Partial<RankingInput> = {}): RankingInput {
  const codes = Object.keys(columns);
  const count = Math.max(0, ...Object.values(columns).map((column) => column.length));
  return {
    digest: DIGEST,
    categories: codes.map((code) => ({ code, direction: 'more', weight: '1', places: 6 })),
    combine: 'sumOfPlaces',
    countPlaces: 'afterExclusions',
    tieBreak: 'none',
    sources: {},
    entries: Array.from({ length: count }, (_, i) => ({
      id: idOf(i),
      isExcluded: false,
      results: Object.fromEntries(codes.map((code) => [code, columns[code]![i] ?? null])),
    })),
    ...rules,
  };
}
