import { boardEntries } from '../../api/board/board-entries.js';
import { certaintyOf } from '../../api/reckoning/standings/certainty.js';
import { computeEdition, standingsOf } from '../../api/reckoning/standings/compute-edition.js';
import {
  disagreementOf,
  isUnplaced,
  needsOf,
  shortfallsOf,
  unplacedBecause,
  unplacedNeed,
  wordsOf,
} from '../../api/reckoning/results/eligibility.js';
import { keyOf } from '../../api/reckoning/results/quantity.js';
import { spreadsBefore, spreadsFound } from '../../api/reckoning/rigs/season-spreads.js';
import { inventInputs } from '../support/invent-inputs.js';
import { KEYS } from '../support/method-series.js';

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

describe('where nothing tells how readings scatter', () => {
  const LACK = 'how diameters scatter in stress (nothing tells it: more specimens do)';
  /** One piece alone was measured of each of these. */
  const withOnePieceOf = (variants: readonly string[]) => {
    const submissions = evidence.submissions.map((one) =>
      one.method.slug === 'diameter' && variants.includes(one.variant) ? { ...one, specimens: one.specimens.slice(0, 1) } : one,
    );
    const computed = computeEdition({ ...evidence, submissions });
    const standings = standingsOf(computed);
    const placedIn = (code: string) => standings.categories[code]!.map(({ id }) => id).toSorted();
    // Whatever has a place has an interval.
    const certainty = certaintyOf(computed, SEED);
    for (const [code, rows] of certainty.categories) expect([...rows.keys()].toSorted()).toEqual(placedIn(code));
    expect([...certainty.overall.keys()].toSorted()).toEqual(standings.overall.map(({ id }) => id).toSorted());
    const needs = standings.incomplete.map(({ id }) => [
      id,
      ...evidence.edition.scheme.rules.categories.flatMap((category) => needsOf(category, id, computed)),
    ]);
    const [stress] = evidence.edition.scheme.rules.categories;
    const withPlace = standings.categories['stress']!.filter(({ place }) => place !== null);
    return {
      stress: placedIn('stress'),
      placed: withPlace.map(({ id }) => id).toSorted(),
      knot: placedIn('knot'),
      needs: needs.toSorted(),
      overall: standings.overall,
      unplaced: [unplacedBecause(stress!, computed), unplacedNeed(stress!, computed)],
    };
  };
  const all = evidence.edition.entries.map(({ variant }) => variant).toSorted();

  test('a result does not count and says what it needs; the others keep places and intervals', () => {
    const [one, two, ...rest] = all;
    expect(withOnePieceOf([one!, two!])).toMatchObject({
      stress: rest,
      placed: rest,
      knot: all,
      unplaced: [null, null],
      needs: [
        [one, LACK],
        [two, LACK],
      ],
    });
    // Of three that are known a fourth can borrow.
    expect(withOnePieceOf([one!])).toMatchObject({ placed: all, needs: [] });
  });

  test('a category of such results alone lists values without places, nobody is incomplete for it, and the score is that of the others', () => {
    const { overall, ...found } = withOnePieceOf(all);
    expect(found).toEqual({
      stress: all,
      placed: [],
      knot: all,
      needs: [],
      unplaced: ['nothingKnownOfScatter', 'how diameters scatter in stress: nothing tells it of any entry; more specimens of each do'],
    });
    expect(overall.map(({ id }) => id).toSorted()).toEqual(all);
    for (const { score, categoryPlaces: of } of overall) {
      expect(Object.keys(of)).toEqual(['knot', 'abrasion']);
      expect(Number(score)).toBe(of['knot']! + of['abrasion']!);
    }
  });

  test('the board tells an entry what its own division needs, whatever is known of diameters in another', () => {
    const [known, others] = [all.slice(0, 2), all.slice(2)];
    const { scheme, ...edition } = evidence.edition;
    const division = { takes: { materials: [], constructions: [] }, scheme, overruled: [] };
    const divisions = [
      { ...division, slug: 'known', name: 'Known', variants: known },
      { ...division, slug: 'others', name: 'Others', variants: others },
    ];
    const submissions = evidence.submissions.map((one) =>
      one.method.slug === 'diameter' && others.includes(one.variant) ? { ...one, specimens: one.specimens.slice(0, 1) } : one,
    );
    const board = boardEntries(computeEdition({ ...evidence, edition: { ...edition, divisions }, submissions }));
    const told = ({ variant, division: of, missing, needs }: (typeof board)[number]) => [variant, of, missing, needs];
    const need = 'how diameters scatter in stress: nothing tells it of any entry; more specimens of each do';
    expect(board.map(told)).toEqual([
      ...known.map((variant) => [variant, 'known', [], []]),
      ...others.map((variant) => [variant, 'others', [], [need]]),
    ]);
  });

  test('a category without any result is not such a one', () => {
    const [stress] = evidence.edition.scheme.rules.categories;
    expect(unplacedBecause(stress!, { results: new Map([['one', new Map()]]), fits: {} })).toBeNull();
  });
});

describe('where nothing tells what rigs and testers differ by', () => {
  const { categories } = evidence.edition.scheme.rules;
  const placedIn = (change: (one: typeof evidence) => object) => {
    const computed = computeEdition({ ...evidence, ...change(evidence) });
    const needs = categories.map((category) => unplacedNeed(category, computed));
    expect(needs.map((need) => need !== null)).toEqual(categories.map((category) => isUnplaced(category, computed)));
    return { needs, codes: categories.flatMap((category) => (isUnplaced(category, computed) ? [] : [category.code])) };
  };
  const stating =
    (percents: Record<string, number>) =>
    ({ edition }: typeof evidence) => ({
      edition: { ...edition, methods: edition.methods.map((one) => ({ ...one, reproducibilityPercent: percents[one.slug] ?? null })) },
    });

  /** By a second tester, who finds a hundredth more. */
  const pulledTwice = evidence.submissions.flatMap((one) => {
    const specimens = one.specimens.map((specimen) => ({
      ...specimen,
      readings: specimen.readings.map((read) => ({ ...read, valueSi: String(1.01 * Number(read.valueSi)) })),
    }));
    return [one, { ...one, reference: `${one.reference}-again`, tester: 'F. Tarn', specimens }];
  });
  /** What an edition has places in after one with these submissions, its own having told it nothing. */
  const placedAfter = (submissions: typeof evidence.submissions): string[] => {
    const before = spreadsBefore([{ spreads: spreadsFound(computeEdition({ ...evidence, submissions })) }]);
    const after = computeEdition({ ...evidence, ...stating({})(evidence) }, before);
    return categories.filter((category) => !isUnplaced(category, after)).map(({ code }) => code);
  };

  test('a category has no places, and says what would give them', () => {
    // Straight pulls were made twice of each of four: that tells.
    const { needs, codes } = placedIn(stating({ diameter: 2 }));
    expect(codes).toEqual(['stress']);
    expect(needs.slice(1)).toEqual(
      ['knot', 'abrasion'].map((code) =>
        expect.stringContaining(`what rigs and testers differ by in ${code}: nothing tells it; four second`),
      ),
    );
  });

  test('a stress has none either where it is the diameters that nothing is known of', () => {
    expect(placedIn(stating({ 'named-knot': 1 })).codes).toEqual(['knot']);
  });

  test('a method that states it, a round robin, and an edition before each give places', () => {
    expect(placedIn(stating({ diameter: 2, 'named-knot': 1, abrasion: 1 })).codes).toEqual(['stress', 'knot', 'abrasion']);
    const tester = { relativeSd: '0.010000', degreesOfFreedom: 3, source: 'roundRobin' } as const;
    const told = { effects: { [KEYS.knot]: { tester } } };
    expect(placedIn((one) => ({ ...stating({ diameter: 2 })(one), ...told })).codes).toEqual(['stress', 'knot']);
    expect(placedAfter(pulledTwice)).toEqual(['stress', 'knot', 'abrasion']);
  });

  test('an edition before of single results tells nothing, however much it was told itself', () => {
    expect(placedAfter(evidence.submissions)).toEqual([]);
    const three = pulledTwice.filter(({ variant, reference }) => variant !== pulledTwice[0]!.variant || !reference.endsWith('-again'));
    expect(placedAfter(three)).toEqual([]);
  });

  test('re-tests give places from as many on as second submissions do', () => {
    const knots = pulledTwice.filter(({ method, reference }) => method.slug === 'named-knot' && reference.endsWith('-again'));
    const placedWith = (count: number) => {
      const drawn = knots.slice(0, count).map((again) => ({ original: again.reference.replace('-again', ''), again }));
      return placedIn((one) => ({ ...stating({})(one), retests: { seed: SEED, percent: '10', from: [], drawnOn: '2026-02-01', drawn } }))
        .codes;
    };
    expect(placedWith(3)).toEqual([]);
    expect(placedWith(4)).toEqual(['knot']);
  });
});

test('a variant whose submissions disagree is told as such, and the board asks for one more', () => {
  const many = inventInputs(5, { variants: 8, testers: 4, rigs: 2, specimens: 6 }).evidence;
  const far = many.submissions.find(({ method }) => method.slug === 'straight-pull')!;
  const times = (text: string): string => String(1.4 * Number(text));
  const specimens = far.specimens.map((one) => ({
    ...one,
    readings: one.readings.map((reading) => ({ ...reading, valueSi: times(reading.valueSi) })),
  }));
  const { results } = computeEdition({ ...many, submissions: many.submissions.map((one) => (one === far ? { ...far, specimens } : one)) });
  const [stress] = many.edition.scheme.rules.categories;
  const asked = [...results.keys()].map((variant) => disagreementOf(stress!, variant, results));
  expect(asked.flatMap((words) => words ?? [])).toEqual(['one more submission in stress: those that are there disagree beyond the others']);
  const noted = [...results].flatMap(([variant, own]) =>
    [...own].flatMap(([key, { note }]) => (note?.includes('disagree beyond') ? [`${variant} ${key}`] : [])),
  );
  expect(noted).toEqual(expect.arrayContaining([`${far.variant} ${KEYS.force}`, `${far.variant} ${keyOf(stress!)}`]));
  expect(noted.filter((one) => !one.startsWith(far.variant))).toEqual([]);
});
