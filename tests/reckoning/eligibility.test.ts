import { certaintyOf } from '../../api/reckoning/standings/certainty.js';
import { computeEdition, standingsOf } from '../../api/reckoning/standings/compute-edition.js';
import { shortfallsOf, wordsOf } from '../../api/reckoning/results/eligibility.js';
import { inventInputs } from '../support/invent-inputs.js';

const RETENTION = { quantity: 'retention', method: 'named-knot', series: 'knotted', section: null } as const;
const SEED = '01'.repeat(16) + '23'.repeat(16);
const { evidence } = inventInputs(5, { variants: 4, testers: 3, rigs: 2, specimens: 6 });
/** The same edition under a scheme that asks for more in its knot category. */
const asking = (minimum: { specimens: number; testers: number; rigs: number }) => {
  const { scheme } = evidence.edition;
  const categories = scheme.rules.categories.map((category) => (category.code === 'knot' ? { ...category, minimum } : category));
  const edition = { ...evidence.edition, scheme: { ...scheme, rules: { ...scheme.rules, categories } } };
  const computed = computeEdition({ ...evidence, edition });
  return { ...computed, standings: standingsOf(computed) };
};
const knot = (computed: ReturnType<typeof asking>) => computed.edition.scheme.rules.categories.find(({ code }) => code === 'knot')!;

test('a result counts from the least evidence on', () => {
  const enough = asking({ specimens: 12, testers: 1, rigs: 1 });
  expect(enough.standings.categories['knot']).toHaveLength(4);
  expect(enough.standings.incomplete).toEqual([]);
});

test.each([
  [{ specimens: 13, testers: 1, rigs: 1 }, 'one more specimen in knot'],
  [{ specimens: 1, testers: 2, rigs: 1 }, 'one more tester in knot'],
  [{ specimens: 1, testers: 1, rigs: 3 }, 'two more rigs in knot'],
])('with %j the entry is incomplete, and is told what it lacks', (minimum, words) => {
  const computed = asking(minimum);
  expect(computed.standings.categories['knot'] ?? []).toEqual([]);
  expect(computed.standings.incomplete.map(({ missing }) => missing)).toEqual(Array(4).fill(['knot']));
  const { id } = computed.standings.incomplete[0]!;
  expect(shortfallsOf(knot(computed), id, computed.results).map(wordsOf)).toEqual([words]);
  // What does not count is not drawn either.
  expect(certaintyOf(computed, SEED).categories.get('knot')?.size ?? 0).toBe(0);
});

test('an entry without any result lacks all of it', () => {
  expect(
    shortfallsOf({ ...RETENTION, code: 'knot', minimum: { specimens: 5, testers: 2, rigs: 1 } }, 'nobody', new Map()).map(wordsOf),
  ).toEqual(['five specimens in knot', 'two testers in knot', 'one rig in knot']);
});
