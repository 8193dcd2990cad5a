import { randomStream } from '../../../api/measurement/random/random-stream.js';
import { competitionPlaces } from '../../../api/measurement/ranking/places/competition-places.js';
import { placeSets } from '../../../api/measurement/ranking/pairs/place-sets.js';
import { sortedPlaces } from '../../../api/measurement/ranking/places/sorted-places.js';

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

// Below and above the number up to which a draw is sorted from the order of the one before.
test.each([40, 300])('the sorter places %d values as the exact decimals do, draw after draw, ties, signs and zeros included', (count) => {
  const random = randomStream([6, 6, 6, 6]);
  const sorter = sortedPlaces(count + 4);
  for (let draw = 0; draw < 3; draw++) {
    const values = Array.from({ length: count }, () => Math.round((random.nextUniform() - 0.5) * 100) / 10);
    values.splice(draw, 0, 0, -0, 1e-300, -1e300);
    sorter.keys.set(values);
    const places = new Uint16Array(values.length + 2);
    sorter.writePlaces(places, 2);
    const texts = values.map((value) =>
      Object.is(value, -0) ? '0' : value === 1e-300 ? `0.${'0'.repeat(299)}1` : value === -1e300 ? `-1${'0'.repeat(300)}` : String(value),
    );
    expect([...places.slice(2)]).toEqual(competitionPlaces(texts, 'less'));
  }
});
