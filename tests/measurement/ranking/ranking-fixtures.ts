import { designOf } from '../../../api/measurement/bench-model/design.js';
import { fitAt } from '../../../api/measurement/bench-model/fit-series.js';
import type { FittedSeries } from '../../../api/measurement/bench-model/fit-series.js';
import { tDeviate } from '../../../api/measurement/random/t-deviate.js';
import { randomStream } from '../../../api/measurement/random/random-stream.js';
import type { ComparedTable } from '../../../api/measurement/ranking/pairs/compare-pairs.js';
import type { ModelRanking, ModelRankingInput } from '../../../api/measurement/ranking/model-ranking.js';
import { rankByModel } from '../../../api/measurement/ranking/rank-by-model.js';
import type { RankingRules } from '../../../api/measurement/ranking/ranking-input.js';
import type { TableCertainty } from '../../../api/measurement/ranking/table-certainty.js';

export const DIGEST = '9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08'; // SHA-256 of "test"

/** A value above 0 with what is known of its error; nothing of it has to be found. */
export interface KnownValue {
  readonly value: number;
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
  /** certificates that it hangs on */
  readonly shared: readonly string[];
  readonly without: Readonly<Record<string, number | null>>;
}

export interface KnownInput extends RankingRules {
  /** certificate → relative standard uncertainty */
  readonly certificates: Readonly<Record<string, number>>;
  readonly entries: readonly {
    readonly id: string;
    readonly isExcluded: boolean;
    readonly results: Readonly<Record<string, KnownValue | null>>;
  }[];
}

/** A value with an uncertainty of its own that is known, sharing nothing. */
export const known = (value: number, standardUncertainty: number, more: Partial<KnownValue> = {}): KnownValue => ({
  value,
  standardUncertainty,
  degreesOfFreedom: Infinity,
  shared: [],
  without: {},
  ...more,
});

export const idOf = (i: number): string => `e${String(i + 1).padStart(3, '0')}`;

/** An input of categories by code, each with the values of all entries. */
export function inputOf(columns: Record<string, readonly (KnownValue | null)[]>, rules: Partial<KnownInput> = {}): KnownInput {
  const codes = Object.keys(columns);
  const count = Math.max(0, ...Object.values(columns).map((column) => column.length));
  return {
    digest: DIGEST,
    categories: codes.map((code) => ({ code, direction: 'more', weight: '1', places: 6 })),
    combine: 'sumOfPlaces',
    countPlaces: 'afterExclusions',
    tieBreak: 'none',
    certificates: {},
    entries: Array.from({ length: count }, (_, i) => ({
      id: idOf(i),
      isExcluded: false,
      results: Object.fromEntries(codes.map((code) => [code, columns[code]![i] ?? null])),
    })),
    ...rules,
  };
}

/** One category as the model has it when no rig, tester or day does anything: one submission an entry, its error known. */
function seriesOf({ entries, certificates }: KnownInput, code: string): FittedSeries {
  const submissions = entries.flatMap(({ id, results }) => {
    const own = results[code];
    if (!own) return [];
    const { value, standardUncertainty, degreesOfFreedom, shared } = own;
    return {
      variant: id,
      value,
      relativeVariance: (standardUncertainty / value) ** 2,
      degreesOfFreedom,
      rig: null,
      tester: 't',
      certificates: shared.map((name) => ({ name, relativeStandardUncertainty: certificates[name]! })),
    };
  });
  return fitAt(designOf({ submissions }), [{ rig: 0, tester: 0, submission: 0 }], new Uint8Array(submissions.length));
}

export const modelInputOf = (input: KnownInput): ModelRankingInput => ({
  ...input,
  series: Object.fromEntries(input.categories.map(({ code }) => [code, seriesOf(input, code)])),
  entries: input.entries.map(({ id, isExcluded, results }) => ({
    id,
    isExcluded,
    results: Object.fromEntries(
      Object.entries(results).map(([code, own]) => [
        code,
        own && { value: own.value, factors: [{ series: code, variant: id, power: 1 }], without: own.without },
      ]),
    ),
  })),
});

type Placed = Omit<ModelRanking, 'categories' | 'overall'> & {
  readonly categories: Readonly<Record<string, TableCertainty>>;
  readonly overall: TableCertainty;
};

/** Ranks values whose errors are known; all tables are placed. */
export function rankKnown(input: KnownInput): Placed {
  const ranking = rankByModel(modelInputOf(input));
  for (const table of [ranking.overall, ...Object.values(ranking.categories)])
    if (table.kind !== 'placed') throw new Error('A table is unplaced, expected places: all errors are known.');
  return ranking as Placed;
}

/** Independent values, each with its own standard error and Student's t; differences by Welch. */
export function independent(
  goodness: readonly number[],
  errors: readonly number[],
  degrees: readonly number[] = goodness.map(() => Infinity),
  draws = 40_000,
): ComparedTable {
  const n = goodness.length;
  const random = randomStream([1, 2, 3, 4]);
  const drawn = new Float64Array(draws * n);
  for (let at = 0; at < drawn.length; at++) drawn[at] = errors[at % n]! * tDeviate(random, degrees[at % n]!);
  const [s, v] = [new Float64Array(n * n), new Float64Array(n * n)];
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) {
      if (i === j) continue;
      const [a, b] = [errors[i]! ** 2, errors[j]! ** 2];
      s[i * n + j] = Math.sqrt(a + b);
      const welch = a ** 2 / degrees[i]! + b ** 2 / degrees[j]!;
      v[i * n + j] = welch === 0 ? Infinity : (a + b) ** 2 / welch;
    }
  return { goodness: Float64Array.from(goodness), errors: drawn, differenceUncertainty: s, degreesOfFreedom: v };
}
