import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import type { CategoryDocument, EditionDocument, VariantDocument } from '../../api/contract/documents/release-documents.js';
import { createHouse, workEdition } from '../support/house.js';
import type { EditionWork, House } from '../support/house.js';
import { csvFile, inventPullsOf, pullRows } from '../support/hand-in-csv.js';
import { acceptAll, FORCE_SCHEME, METHOD_VERSION, openEdition, METHODS, moveEdition, publish, VARIANTS } from '../support/season.js';

/** Leads in every category over three editions, whatever the scatter of the readings. */
const best = { ...VARIANTS[0]!, slug: 'gannet-20', forceN: 120, knotPercent: 80, abrasionPercent: 95 };
const [, steady, rising, absent] = VARIANTS as [unknown, (typeof VARIANTS)[0], (typeof VARIANTS)[0], (typeof VARIANTS)[0]];
const early = { ...rising, forceN: 70, knotPercent: 45, abrasionPercent: 58 };
const risen = { ...rising, forceN: rising.forceN * 1.4, knotPercent: 70 };
const SECOND_METHOD = METHODS.map((slug) => ({ slug, number: slug === 'straight-pull' ? 2 : 1 }));

let house: House;
beforeAll(async () => {
  house = await createHouse();
  await house.t.app.select(ReleasesModule).get(ReleaseWork).start(false);
  await publishEdition('first', { variants: [best, steady, absent], seed: 1 });
  await publishEdition('second', { variants: [best, steady, early], seed: 3, change: { previous: 'first' } });
  await house.editor
    .call('post', '/v1/catalogue/methods/straight-pull/versions')
    .send({ ...METHOD_VERSION, number: 2, effectiveFrom: '2026-03-12' })
    .expect(201);
  await publishEdition('third', {
    variants: [best, steady, risen, absent],
    seed: 5,
    benchDay: '2026-03-13',
    pullVersion: 2,
    change: { previous: 'second', methods: SECOND_METHOD },
  });
});
afterAll(() => house.t.close());

async function publishEdition(slug: string, work: EditionWork): Promise<void> {
  await workEdition(house, slug, work);
  await moveEdition(house.editor, slug, 'closure');
  await publish(house.editor, slug);
}
const read = async <T>(path: string): Promise<T> => (await house.t.call('get', `/v1/editions/${path}`).expect(200)).body as T;
const overall = async (edition: string) =>
  new Map(
    (await read<EditionDocument>(edition)).overall.map(({ variant, place, movement }) => [variant.slug, { place: place!, movement }]),
  );
const category = async (edition: string, code: string) =>
  new Map((await read<CategoryDocument>(`${edition}/standings/${code}`)).rows.map((row) => [row.variant.slug, row]));

test('in a first edition all is new', async () => {
  const rows = await overall('first');
  expect([...rows.values()].map(({ movement }) => movement.kind)).toEqual(['new', 'new', 'new']);
  expect((await read<EditionDocument>('first')).scheme.categories.map(({ comparability }) => comparability)).toEqual(
    Array.from({ length: 3 }, () => 'first'),
  );
});

test('what stays first runs on, what was not there is new', async () => {
  const rows = await overall('second');
  expect(rows.get(best.slug)).toEqual({ place: 1, movement: { kind: 'unchanged', places: 0, runAtTop: 2 } });
  expect(rows.get(rising.slug)!.movement).toMatchObject({ kind: 'new', places: null, runAtTop: 0 });
  expect((await overall('third')).get(best.slug)!.movement.runAtTop).toBe(3);
});

test('what gained places has moved by as many, what comes back after a gap has returned', async () => {
  const [before, now] = [await overall('second'), await overall('third')];
  const gained = before.get(rising.slug)!.place - now.get(rising.slug)!.place;
  expect(gained).toBeGreaterThan(0);
  expect(now.get(rising.slug)!.movement).toEqual({ kind: 'moved', places: gained, runAtTop: 0 });
  const lost = before.get(steady.slug)!.place - now.get(steady.slug)!.place;
  expect(lost).toBeLessThan(0);
  expect(now.get(steady.slug)!.movement).toMatchObject({ kind: 'moved', places: lost });
  expect(now.get(absent.slug)!.movement).toMatchObject({ kind: 'returned', places: null });
});

test('a method version that does not compare breaks the category, and only that', async () => {
  const { scheme } = await read<EditionDocument>('third');
  expect(Object.fromEntries(scheme.categories.map(({ code, comparability }) => [code, comparability]))).toEqual({
    stress: 'notComparable',
    knot: 'same',
    abrasion: 'same',
  });
  const stress = (await category('third', 'stress')).get(rising.slug)!;
  expect(stress.movement).toMatchObject({ kind: 'notComparable', places: null });
  expect(stress.change).toEqual({ kind: 'notComparable', percent: null });
  const knot = (await category('third', 'knot')).get(rising.slug)!;
  expect(knot.movement.kind).not.toBe('notComparable');
  expect(knot.change.kind).toBe('changed');
  const before = (await category('second', 'knot')).get(rising.slug)!;
  const percent = (100 * (Number(knot.figure.value) - Number(before.figure.value))) / Number(before.figure.value);
  expect(Number(knot.change.percent)).toBeCloseTo(percent, 0);
});

test('a value that moved within its scatter is told to be within the noise', async () => {
  expect((await category('third', 'abrasion')).get(best.slug)!.change.kind).toBe('withinNoise');
  expect((await category('second', 'abrasion')).get(rising.slug)!.change).toEqual({ kind: 'first', percent: null });
});

test('the history of a variant tells each edition, and marks the break', async () => {
  const { history } = await read<VariantDocument>(`third/variants/${best.slug}`);
  expect(history.map(({ edition, overallPlace }) => [edition, overallPlace])).toEqual([
    ['first', 1],
    ['second', 1],
    ['third', 1],
  ]);
  const breaks = history.map(({ categories }) => categories.filter(({ isBreak }) => isBreak).map(({ code }) => code));
  expect(breaks).toEqual([[], [], ['stress']]);
  const gap = await read<VariantDocument>(`third/variants/${absent.slug}`);
  expect(gap.history.map(({ edition }) => edition)).toEqual(['first', 'third']);
});

describe('the board of an edition that is open', () => {
  const rules = { scheme: { slug: FORCE_SCHEME.slug, number: 1 }, methods: [{ slug: 'straight-pull', number: 3 }] };
  const boardOf = async (edition: string): Promise<string[][]> =>
    (await house.editor.call('get', `/v1/editions/${edition}/board`).expect(200)).body.entries.map(
      ({ needs }: { needs: string[] }) => needs,
    );
  /** One pull of each variant; a third of the force too much on the one that is named. */
  async function pull(edition: string, name: string, rig: string, seed: number, far?: string): Promise<void> {
    const rows = VARIANTS.flatMap((variant, i) => {
      const at = { edition, spool: house.codes.get(variant.slug)!, instrument: rig, benchDay: '2026-03-14', methodVersion: 3 };
      const forceN = variant.forceN * (variant.slug === far ? 1.3 : 1);
      return pullRows(at, 'straight-pull', inventPullsOf({ ...variant, forceN }, 'straight-pull', seed + i));
    });
    const tester = await house.t.caller(['tester'], name);
    await tester.call('post', '/v1/submissions').set('Content-Type', 'text/csv').send(csvFile(rows)).expect(201);
    await acceptAll(house.reviewer, edition);
  }
  beforeAll(async () => {
    const parameters = { ...METHOD_VERSION.parameters, reproducibilityPercent: null };
    const version = { ...METHOD_VERSION, number: 3, effectiveFrom: '2026-03-14', parameters };
    await house.editor.call('post', '/v1/catalogue/methods/straight-pull/versions').send(version).expect(201);
    await house.editor.call('post', '/v1/schemes').send(FORCE_SCHEME).expect(201);
    for (const [edition, previous] of [
      ['fourth', 'third'],
      ['alone', null],
    ] as const) {
      await openEdition(
        house.editor,
        edition,
        VARIANTS.map(({ slug }) => slug),
        { ...rules, previous },
      );
      await pull(edition, `B. Holm ${edition}`, 'R1', 11);
    }
  });

  test('says what would tell of rigs and testers where nothing does, also after editions of single results', async () => {
    const need = expect.stringContaining('what rigs and testers differ by in force: nothing tells it');
    for (const edition of ['fourth', 'alone']) expect(await boardOf(edition)).toEqual(VARIANTS.map(() => [need]));
  });

  test('asks for one more submission where those that are there disagree beyond the others', async () => {
    const [, , far] = VARIANTS;
    await pull('alone', 'C. Reed', 'R2', 31, far!.slug);
    const asked = ['one more submission in force: those that are there disagree beyond the others'];
    expect(await boardOf('alone')).toEqual(VARIANTS.map((variant) => (variant === far ? asked : [])));
  });
});
