import { readFileSync } from 'node:fs';
import { normalDeviate } from '../../../api/measurement/random/normal-deviate.js';
import { randomStream } from '../../../api/measurement/random/random-stream.js';
import { closeGroups } from '../../../api/measurement/ranking/close-groups.js';
import { placeIntervals } from '../../../api/measurement/ranking/place-intervals.js';
import { chancesOfFirst, scoreDraws } from '../../../api/measurement/ranking/score-draws.js';

const DRAWS = 4_000;
const stream = (first: number) => {
  const random = randomStream([first, 2, 3, 4]);
  return () => normalDeviate(random);
};

function drawn(widths: readonly number[], draws = DRAWS): Float64Array[] {
  const next = stream(1);
  return widths.map((width) => Float64Array.from({ length: draws }, () => width * next()));
}

interface Case {
  id: string;
  inputs: { mu?: number[]; sd?: number[]; estimate?: number[]; se?: number[]; names?: string[] };
  expected: { p_first?: number[]; rank?: number[]; simultaneous_L?: number[]; simultaneous_U?: number[] };
}
const published = (id: string) =>
  (JSON.parse(readFileSync('tests/measurement/fixtures/ranking.json', 'utf8')) as Case[]).find((entry) => entry.id === id)!;

test('far apart: every place is certain; far together: none is', () => {
  expect(placeIntervals([30, 20, 10], drawn([0.1, 0.1, 0.1]), 'more')).toEqual([1, 2, 3].map((place) => ({ low: place, high: place })));
  expect(placeIntervals([30, 20, 10], drawn([0.1, 0.1, 0.1]), 'less')).toEqual([3, 2, 1].map((place) => ({ low: place, high: place })));
  expect(placeIntervals([10.01, 10, 9.99], drawn([1, 1, 1]), 'more')).toEqual([1, 1, 1].map(() => ({ low: 1, high: 3 })));
});

test('without any spread, equal values stay together and different ones are told apart', () => {
  expect(placeIntervals([5, 5, 4], drawn([0, 0, 0]), 'more')).toEqual([
    { low: 1, high: 2 },
    { low: 1, high: 2 },
    { low: 3, high: 3 },
  ]);
});

test('K09 PISA 2018 mathematics (Mogstad, Romano, Shaikh, Wilhelm; R csranks vignette): every interval holds the published rank', () => {
  const { inputs, expected } = published('K09-csranks-pisa');
  const intervals = placeIntervals(inputs.estimate!, drawn(inputs.se!), 'more');
  intervals.forEach(({ low, high }, i) => {
    expect(low).toBeLessThanOrEqual(expected.rank![i]!);
    expect(high).toBeGreaterThanOrEqual(expected.rank![i]!);
  });
  // The vignette's interval for one country alone is 8 to 23; a simultaneous one holds it.
  // Recomputed by the library's own bootstrap (simultaneous_L, simultaneous_U): equal within two ranks.
  intervals.forEach(({ low, high }, i) => {
    expect(Math.abs(low - expected.simultaneous_L![i]!)).toBeLessThanOrEqual(2);
    expect(Math.abs(high - expected.simultaneous_U![i]!)).toBeLessThanOrEqual(2);
  });
  const unitedKingdom = intervals[inputs.names!.indexOf('United Kingdom')]!;
  expect(unitedKingdom.low).toBeLessThanOrEqual(8);
  expect(unitedKingdom.high).toBeGreaterThanOrEqual(23);
  expect(unitedKingdom.high - unitedKingdom.low).toBeLessThan(25);
});

test('step-down tells more apart than one comparison with one critical value, never less', () => {
  const values = [100, 60, 20, 3.1, 0];
  const deviations = drawn([1, 1, 1, 0.6, 0.6]);
  const intervals = placeIntervals(values, deviations, 'more');
  expect(intervals[3]).toEqual({ low: 4, high: 4 });
});

test('jointly they hold the true places in about 95 % of seeded trials', () => {
  const truth = Array.from({ length: 10 }, (_, i) => 100 - 0.5 * i);
  const next = stream(7);
  const deviations = drawn(
    truth.map(() => 1),
    500,
  );
  let held = 0;
  for (let trial = 0; trial < 200; trial++) {
    const intervals = placeIntervals(
      truth.map((value) => value + next()),
      deviations,
      'more',
    );
    if (intervals.every(({ low, high }, i) => low <= i + 1 && i + 1 <= high)) held += 1;
  }
  // 0.95 less three standard errors of 200 trials
  expect(held / 200).toBeGreaterThanOrEqual(0.9);
});

test('groups: a new one begins where an interval no longer holds the place of the first', () => {
  expect(
    closeGroups([
      { low: 1, high: 3 },
      { low: 1, high: 4 },
      { low: 2, high: 4 },
      { low: 3, high: 4 },
    ]),
  ).toEqual([1, 1, 2, 2]);
  expect(closeGroups([])).toEqual([]);
});

test('K08 four independent normals: the chance of being first, exact by quadrature', () => {
  const { inputs, expected } = published('K08-four-lines');
  const scores = scoreDraws([{ direction: 'more', weight: 1, values: inputs.mu!, deviations: drawn(inputs.sd!, 20_000) }]);
  const chances = chancesOfFirst(scores);
  // Monte Carlo tolerance 4·√(p(1 − p)/N)
  chances.forEach((chance, i) =>
    expect(Math.abs(chance - expected.p_first![i]!)).toBeLessThan(
      4 * Math.sqrt((expected.p_first![i]! * (1 - expected.p_first![i]!) + 1e-6) / 20_000),
    ),
  );
  expect(chances.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 9);
});

test('drawn scores are weighted competition places, ties shared', () => {
  const none = [new Float64Array(1), new Float64Array(1), new Float64Array(1)];
  const scores = scoreDraws([
    { direction: 'more', weight: 2, values: [5, 5, 1], deviations: none },
    { direction: 'less', weight: 1, values: [3, 2, 1], deviations: none },
  ]);
  expect(scores.map((own) => own[0])).toEqual([2 + 3, 2 + 2, 6 + 1]);
  expect(chancesOfFirst([Float64Array.of(1, 2), Float64Array.of(1, 3)])).toEqual([0.75, 0.25]);
});
