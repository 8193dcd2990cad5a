/** What the ranking model says, as published: held against the evidence that a reader finds beside it. */
import { computeRelease } from '../../api/reckoning/compute-release.js';
import type { ReleaseInputs } from '../../api/reckoning/release-inputs.js';
import type {
  CategoryDocument,
  EditionDocument,
  MethodDocument,
  PairsDocument,
  VariantDocument,
} from '../../api/contract/documents/release-documents.js';
import { sensitivityDocumentSchema } from '../../api/contract/documents/sensitivity.js';
import { sensitivityBeside } from '../../api/reckoning/documents/sensitivity.js';
import type { Certainty } from '../../api/reckoning/standings/certainty.js';
import { inventInputs } from '../support/invent-inputs.js';

const inputs = inventInputs(5, { variants: 8, testers: 4, rigs: 2, specimens: 6 });

function documents(from: ReleaseInputs) {
  const files = new Map(computeRelease(from).map(({ path, content }) => [path, content]));
  const read = (path: string): unknown => JSON.parse(files.get(path)!);
  const edition = read('documents/edition.json') as EditionDocument;
  return {
    edition,
    categories: edition.scheme.categories.map(({ code }) => read(`documents/standings/${code}.json`) as CategoryDocument),
    variants: edition.overall.map(({ variant }) => read(`documents/variants/${variant.slug}.json`) as VariantDocument),
  };
}

const usual = documents(inputs);

/** The same evidence with the readings of some submissions multiplied. */
const scaled = (factor: number, which: (submission: ReleaseInputs['evidence']['submissions'][number]) => boolean): ReleaseInputs => ({
  ...inputs,
  evidence: {
    ...inputs.evidence,
    submissions: inputs.evidence.submissions.map((submission) =>
      which(submission)
        ? {
            ...submission,
            specimens: submission.specimens.map((specimen) => ({
              ...specimen,
              readings: specimen.readings.map((reading) =>
                reading.role === 'breakingForce' ? { ...reading, valueSi: String(Number(reading.valueSi) * factor) } : reading,
              ),
            })),
          }
        : submission,
    ),
  },
});

test('the top group is every variant whose interval holds place 1', () => {
  const { edition, categories } = usual;
  for (const rows of [edition.overall, ...categories.map((one) => one.rows)]) {
    const placed = rows.filter(({ place }) => place !== null);
    expect(placed.length).toBeGreaterThan(2);
    for (const { group, placeInterval } of placed) expect(group === 1).toBe(placeInterval!.low === 1);
  }
  for (const { category, variants } of edition.categoryTops) {
    const { rows } = categories.find((one) => one.category.code === category)!;
    expect(variants.map(({ slug }) => slug)).toEqual(rows.filter(({ group }) => group === 1).map(({ variant }) => variant.slug));
  }
});

test('chances of being first add up, and are told of placed rows alone', () => {
  const { edition } = usual;
  const chances = edition.overall.map(({ place, chanceOfFirstPercent }) => [place, chanceOfFirstPercent] as const);
  for (const [place, chance] of chances) expect(chance === null).toBe(place === null);
  // Shared first places count for each that shares, so that the sum is 100 % or more.
  expect(chances.reduce((sum, [, chance]) => sum + Number(chance ?? 0), 0)).toBeGreaterThan(99);
});

test('chances of pairs agree with those of neighbours, and of both directions', () => {
  const pairs = JSON.parse(computeRelease(inputs).find(({ path }) => path === 'documents/pairs.json')!.content) as PairsDocument;
  const placed = usual.edition.overall.filter(({ place }) => place !== null);
  expect([...pairs.variants].sort()).toEqual(placed.map(({ variant }) => variant.slug).sort());
  pairs.variants.forEach((slug, i) => {
    expect(pairs.aheadPercent[i]![i]).toBe(50);
    pairs.variants.forEach((_, j) =>
      expect(Math.abs(pairs.aheadPercent[i]![j]! + pairs.aheadPercent[j]![i]! - 100)).toBeLessThanOrEqual(1),
    );
    const next = placed.find(({ variant }) => variant.slug === slug)!.chanceAheadOfNextPercent;
    if (i + 1 < pairs.variants.length) expect(Math.abs(pairs.aheadPercent[i]![i + 1]! - Number(next))).toBeLessThanOrEqual(1);
  });
});

test('shares of a budget add up to the whole, and name what the model tells apart', () => {
  const { variants } = usual;
  for (const { budgets } of variants) {
    expect(budgets.length).toBeGreaterThan(2);
    for (const { lines, standardUncertaintyPercent } of budgets) {
      expect(lines.reduce((sum, { sharePercent }) => sum + Number(sharePercent), 0)).toBeCloseTo(100, 0);
      expect(Number(standardUncertaintyPercent)).toBeGreaterThan(0);
      expect(lines.map(({ component }) => component)).toEqual(expect.arrayContaining(['repeatability', 'submission', 'tester']));
    }
  }
});

test('each category, tester and rig is left out in turn', () => {
  const { edition, variants } = usual;
  const { leftOut, weights } = edition.sensitivity!;
  const named = (kind: string) => leftOut.filter((one) => one.kind === kind).map(({ name }) => name);
  expect(named('category').sort()).toEqual(edition.scheme.categories.map(({ code }) => code).sort());
  const submissions = variants.flatMap((one) => one.submissions);
  expect(named('tester')).toEqual([...new Set(submissions.map(({ tester }) => tester))].sort());
  expect(named('rig').length).toBeGreaterThan(1);
  expect(weights!.firstPlaces.reduce((sum, { percent }) => sum + Number(percent), 0)).toBeCloseTo(100, 0);
});

test('of many entries those that turn most pairs round stand beside the standings; the document of its own has all', () => {
  const swaps = Array.from({ length: 30 }, (_, i) => [`a-${i}`, `b-${i}`] as const);
  const entry = (i: number) => ({ kind: 'entry' as const, name: `e-${i}`, first: [], swappedPairs: (i * 7) % 30, swaps, dropped: [] });
  const rig = { kind: 'party' as const, name: 'rig:R1', first: [], swappedPairs: 0, swaps: [], dropped: [] };
  const leftOut = [rig, ...Array.from({ length: 30 }, (_, i) => entry(i))];
  const { leftOut: beside } = sensitivityBeside({ sensitivity: { leftOut, weights: null } } as unknown as Certainty)!;
  expect(beside.map(({ name }) => name)).toEqual([
    'R1',
    ...leftOut.slice(1).flatMap(({ name, swappedPairs }) => (swappedPairs >= 10 ? name : [])),
  ]);
  expect(beside.map((one) => one.swaps.length)).toEqual([0, ...Array<number>(20).fill(10)]);
  const files = new Map(computeRelease(inputs).map(({ path, content }) => [path, content]));
  const whole = sensitivityDocumentSchema.parse(JSON.parse(files.get('documents/sensitivity.json')!));
  expect(whole.sensitivity).toEqual(usual.edition.sensitivity);
});

test('a rig that reads high widens every interval of the category, and says so', () => {
  const code = inputs.evidence.edition.scheme.rules.categories.find(({ quantity }) => quantity === 'apparentStress')!.code;
  const stress = ({ categories }: typeof usual) => categories.find(({ category }) => category.code === code)!;
  const before = stress(usual);
  const high = stress(
    documents(
      scaled(1.12, ({ method, instruments }) => method.slug === 'straight-pull' && instruments.some(({ code: rig }) => rig === 'R2')),
    ),
  );
  expect(Number(high.spread.betweenSubmissionsPercent)).toBeGreaterThan(Number(before.spread.betweenSubmissionsPercent) + 1);
  const width = ({ rows }: CategoryDocument) => rows.map(({ figure }) => (Number(figure.high) - Number(figure.low)) / Number(figure.value));
  const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  expect(mean(width(high))).toBeGreaterThan(1.05 * mean(width(before)));
});

test('where nothing tells what rigs and testers differ by, values stand without places and the score leaves them out; the reason is published', () => {
  const { edition, submissions } = inputs.evidence;
  const methods = edition.methods.map((one) => ({ ...one, reproducibilityPercent: one.slug === 'named-knot' ? null : 2 }));
  const bare = documents({ ...inputs, evidence: { ...inputs.evidence, submissions, edition: { ...edition, methods } } });
  const unplaced = bare.edition.scheme.categories.map(({ code, unplaced: reason }) => [code, reason]);
  expect(unplaced).toEqual([
    ['stress', undefined],
    ['knot', 'nothingKnownOfEffects'],
    ['abrasion', undefined],
  ]);
  const [stress, knot] = bare.categories;
  const included = edition.entries.flatMap(({ variant, exclusion }) => (exclusion ? [] : [variant]));
  expect(knot!.rows.map(({ variant }) => variant.slug)).toEqual(included);
  for (const { place, placeInterval, couldBeFirst, figure } of knot!.rows) {
    expect([place, placeInterval, couldBeFirst, figure.low]).toEqual([null, null, null, null]);
    expect(Number(figure.value)).toBeGreaterThan(0);
  }
  expect(stress!.rows.map(({ place }) => place)).toEqual(usual.categories[0]!.rows.map(({ place }) => place));
  expect(stress!.rows[0]!.placeInterval).not.toBeNull();
  expect(bare.edition.incomplete).toEqual([]);
  expect(bare.edition.overall).toHaveLength(included.length);
  for (const { placeInterval, categoryPlaces } of bare.edition.overall)
    expect([placeInterval !== null, Object.keys(categoryPlaces).toSorted()]).toEqual([true, ['abrasion', 'stress']]);
  expect(bare.edition.sensitivity).not.toBeNull();
  const none = documents({
    ...inputs,
    evidence: {
      ...inputs.evidence,
      submissions,
      edition: { ...edition, methods: methods.map((one) => ({ ...one, reproducibilityPercent: null })) },
    },
  });
  expect([none.edition.overall, none.edition.sensitivity]).toEqual([[], null]);
  expect(none.edition.incomplete.map(({ missing, needs }) => [missing, needs.length])).toEqual(
    included.map(() => [['stress', 'knot', 'abrasion'], 3]),
  );
});

test('a method tells the reproducibility that it states, as places may rest on it', () => {
  const files = new Map(computeRelease(inputs).map(({ path, content }) => [path, content]));
  const { parameters } = JSON.parse(files.get('documents/methods/named-knot-1.json')!) as MethodDocument;
  expect(parameters).toContainEqual({ name: 'Other rigs, testers and days differ by', value: '2', unit: '%' });
});

test('the place that the score adds up stands beside the place in the category, where it is another', () => {
  const { edition } = inputs.evidence;
  const { rules } = edition.scheme;
  const [best] = usual.categories[0]!.rows;
  const leftOut = { reasonCode: 'notObtainable', words: 'No shop had it.', effect: 'closedUp' } as const;
  const entries = edition.entries.map((one) => ({ ...one, exclusion: one.variant === best!.variant.slug ? leftOut : null }));
  const counted = (countPlaces: typeof rules.countPlaces) =>
    documents({
      ...inputs,
      evidence: { ...inputs.evidence, edition: { ...edition, entries, scheme: { ...edition.scheme, rules: { ...rules, countPlaces } } } },
    });
  const { edition: before, categories } = counted('beforeExclusions');
  const adds = new Map(before.overall.map(({ variant, categoryPlaces }) => [variant.slug, categoryPlaces]));
  for (const { category, rows } of categories)
    for (const { variant, place, placeInScore } of rows) expect(placeInScore ?? place).toBe(adds.get(variant.slug)![category.code]);
  expect(categories[0]!.rows.map(({ place, placeInScore }) => placeInScore! - place!)).toEqual(Array(inputs.variants.length - 1).fill(1));
  for (const { rows } of counted('afterExclusions').categories) expect(rows.every((row) => !('placeInScore' in row))).toBe(true);
});
