import { randomStream } from '../../../api/measurement/random/random-stream.js';
import { differenceUncertainties, drawErrors, drawSources } from '../../../api/measurement/ranking/draw-errors.js';
import { placeSets } from '../../../api/measurement/ranking/place-sets.js';
import { sortedPlaces } from '../../../api/measurement/ranking/sorted-places.js';
import { competitionPlaces } from '../../../api/measurement/ranking/competition-places.js';
import { known } from './ranking-fixtures.js';

test('what a source shares cancels in a difference, what it does not widens it', () => {
  const sources = {
    r1: { relativeStandardUncertainty: 0.02, degreesOfFreedom: Infinity },
    r2: { relativeStandardUncertainty: 0.03, degreesOfFreedom: Infinity },
  };
  const on = (source: string) => known(100, 1, { shared: [{ source, sensitivity: 1 }] });
  const same = differenceUncertainties([on('r1'), on('r1')], sources);
  expect(same[1]).toBeCloseTo(Math.SQRT2, 12);
  const other = differenceUncertainties([on('r1'), on('r2')], sources);
  expect(other[1]).toBeCloseTo(Math.sqrt(2 + 4 + 9), 12);
  // The draws agree with the formula: the spread of drawn differences.
  const random = randomStream([2, 7, 1, 8]);
  const errors = drawErrors([on('r1'), on('r2'), on('r1')], drawSources(sources, 20_000, random), 20_000, random);
  const spread = (i: number, j: number): number => {
    let squares = 0;
    for (let at = 0; at < errors.length; at += 3) squares += (errors[at + i]! - errors[at + j]!) ** 2;
    return Math.sqrt(squares / 20_000);
  };
  expect(spread(0, 1) / Math.sqrt(15)).toBeCloseTo(1, 1);
  expect(spread(0, 2) / Math.SQRT2).toBeCloseTo(1, 1);
});

test('a sensitivity counts with its power, and one source twice adds up', () => {
  const sources = { d: { relativeStandardUncertainty: 0.01, degreesOfFreedom: Infinity } };
  const twice = known(100, 0, {
    shared: [
      { source: 'd', sensitivity: -1 },
      { source: 'd', sensitivity: -1 },
    ],
  });
  expect(differenceUncertainties([twice, known(100, 0)], sources)[1]).toBeCloseTo(2, 12);
});

test('place sets: intervals, groups by whom nobody of the rest is ahead of, widened to a published tie', () => {
  // 0 ahead of 2 and 3, 1 ahead of 3 only
  const isAhead = Uint8Array.of(0, 0, 1, 1, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0, 0, 0);
  expect(placeSets(isAhead, [1, 2, 3, 4])).toEqual([
    { low: 1, high: 2, group: 1 },
    { low: 1, high: 3, group: 1 },
    { low: 2, high: 4, group: 2 },
    { low: 3, high: 4, group: 2 },
  ]);
  expect(placeSets(Uint8Array.of(0, 1, 0, 0), [1, 1])).toEqual([
    { low: 1, high: 1, group: 1 },
    { low: 1, high: 2, group: 2 },
  ]);
  // A chain of three, given worst first
  expect(placeSets(Uint8Array.of(0, 0, 0, 1, 0, 0, 1, 1, 0), [3, 2, 1]).map(({ group }) => group)).toEqual([3, 2, 1]);
});

test('the sorter places as the exact decimals do, ties, signs and zeros included', () => {
  const random = randomStream([6, 6, 6, 6]);
  const values = Array.from({ length: 300 }, () => Math.round((random.nextUniform() - 0.5) * 100) / 10);
  values.push(0, -0, 1e-300, -1e300);
  const sorter = sortedPlaces(values.length);
  sorter.keys.set(values);
  const places = new Uint16Array(values.length + 2);
  sorter.writePlaces(places, 2);
  const texts = values.map((value) =>
    Object.is(value, -0) ? '0' : value === 1e-300 ? `0.${'0'.repeat(299)}1` : value === -1e300 ? `-1${'0'.repeat(300)}` : String(value),
  );
  expect([...places.slice(2)]).toEqual(competitionPlaces(texts, 'less'));
});
