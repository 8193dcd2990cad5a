/** What the examples of docstrings take for granted: the same small things for all of them, or by file. */
import { randomStream } from '../../../api/measurement/random/random-stream.js';
import { designOf } from '../../../api/measurement/bench-model/design.js';
import { fitAt } from '../../../api/measurement/bench-model/fit-series.js';
import { submissionLevel } from '../../../api/measurement/bench-model/submission-level.js';
import { standOnce } from '../../../api/measurement/ranking/stand-once.js';
import type { PointTable } from '../../../api/measurement/ranking/stand-once.js';
import { seriesOf, submission } from '../bench-model/bench-model-fixtures.js';
import { inputOf, known } from '../ranking/ranking-fixtures.js';

const names = ['a', 'b'];
const [stress, knot] = [
  [known(100, 1), known(90, 1)],
  [known(70, 1), known(60, 1)],
];
const ranked = inputOf({ stress, knot });
const input = { ...ranked, entries: ranked.entries.map((entry, i) => ({ ...entry, id: names[i]! })) };
const pointTable: PointTable = {
  combine: 'sumOfPlaces',
  countPlaces: 'afterExclusions',
  tieBreak: 'none',
  entries: names.map((id) => ({ id, isExcluded: false })),
  categories: ['stress', 'knot'].map((code) => ({ code, weight: 1e6, goodness: Float64Array.of(2, 1) })),
};
const standings = standOnce(pointTable);
const DRAWS = 10_000;
const each = (value: readonly number[]): number[] => Array.from({ length: DRAWS }, () => value).flat();
const scored = { weight: 1, places: Uint16Array.from(each([1, 2])), goodness: Float64Array.from(each([2, 1])) };

const series = seriesOf([
  submission('a', 100, 'R1', 'T1'),
  submission('a', 100, 'R1', 'T2'),
  submission('b', 90, 'R1', 'T1'),
  submission('b', 90, 'R1', 'T2'),
]);
const design = designOf(series);
const fit = fitAt(design, [{ rig: 0, tester: 0, submission: 0 }], new Uint8Array(2));
const evidenceOfModel = { value: 100, factors: [{ series: 'force', variant: 'a', power: 1 }], without: {} };
const modelInput = {
  ...input,
  categories: input.categories.filter(({ code }) => code === 'stress'),
  series: { force: fit },
  entries: names.map((id, i) => ({
    id,
    isExcluded: false,
    results: { stress: { value: fit.values[i]!, factors: [{ series: 'force', variant: id, power: 1 }], without: {} } },
  })),
};
const compared = {
  goodness: Float64Array.of(9, 1),
  errors: Float64Array.from({ length: 20 }, (_, at) => (at % 3) / 10),
  differenceUncertainty: Float64Array.of(0, 1, 1, 0),
  degreesOfFreedom: new Float64Array(4).fill(Infinity),
};

const COMMON = {
  series,
  fit,
  level: submissionLevel(design, 0, new Uint8Array(2)),
  evidenceOfModel,
  modelInput,
  valueInTable: { value: 100, standardUncertainty: 0.01, degreesOfFreedom: 10 },
  drawnSeries: new Map([['force', new Float64Array(20)]]),
  drawCount: 10,
  compared,
  a: known(10, 3),
  b: known(12, 4),
  evidence: known(100, 2),
  force: known(80, 1),
  diameter: known(0.2, 0.001),
  drawnSources: new Map(),
  points: Array.from({ length: 24 }, (_, i) => ({ extensionMm: i, forceN: Math.max(0, 6 * (i - 3)) })),
  ids: names,
  input,
  standings,
  table: pointTable,
  category: input.categories[0],
  categories: standings.categories,
  scored: [{ found: scored, settled: scored }],
  tied: { places: [1, 1], categories: [{ places: [2, 1] }], m: 2, from: 0 },
  drawing: { sources: new Map(), draws: DRAWS, level: 0.95, random: randomStream([1, 2, 3, 4]), rankedIds: names },
};

const BY_FILE: Readonly<Record<string, object>> = {
  'ranking/table-certainty.ts': {
    table: {
      ids: names,
      published: Float64Array.of(2, 1),
      goodness: Float64Array.of(2, 1),
      errors: new Float64Array(2 * DRAWS),
      places: scored.places,
      differenceUncertainty: Float64Array.of(0, 0.1, 0.1, 0),
      level: 0.95,
    },
  },
  'ranking/places/standings.ts': {
    input: {
      categories: ['stress', 'knot'].map((code) => ({ code, direction: 'more', weight: '1' })),
      combine: 'sumOfPlaces',
      countPlaces: 'afterExclusions',
      tieBreak: 'none',
      entries: [
        { id: 'a', exclusion: null, values: { stress: '100', knot: '70' } },
        { id: 'b', exclusion: null, values: { stress: '90', knot: '60' } },
      ],
    },
  },
};

/** Names that an example of a file may use, the random ones new each time. */
export const givensOf = (file: string): Record<string, unknown> => ({
  ...COMMON,
  random: randomStream([1, 2, 3, 4]),
  ...BY_FILE[file],
});
