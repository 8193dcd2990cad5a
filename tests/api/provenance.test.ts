/** The chain behind every published figure, walked by API down to the text of each reading, and the means made from it again. */
import { KEYS } from '../support/method-series.js';
import type { CategoryDocument, EditionDocument } from '../../api/contract/documents/release-documents.js';
import type { Provenance } from '../../api/public-api/provenance.js';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { sha256 } from '../../api/platform/identifiers/identifiers.js';
import { createHouse, handInEdition } from '../support/house.js';
import type { House } from '../support/house.js';
import { acceptAll, moveEdition, openEdition, publish, VARIANTS } from '../support/season.js';

let house: House;
beforeAll(async () => {
  house = await createHouse();
  await openEdition(
    house.editor,
    '2026',
    VARIANTS.map(({ slug }) => slug),
  );
  await handInEdition(house, '2026');
  await acceptAll(house.reviewer, '2026');
  await moveEdition(house.editor, '2026', 'closure');
  await house.t.app.select(ReleasesModule).get(ReleaseWork).start(false);
  await publish(house.editor, '2026');
});
afterAll(() => house.t.close());

const get = async <Answer>(path: string): Promise<Answer> => (await house.t.call('get', path).expect(200)).body as Answer;
const provenance = (variant: string, query = '') => get<Provenance>(`/v1/editions/2026/variants/${variant}/provenance${query}`);
const average = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

type Submission = Provenance['figures'][number]['submissions'][number];
/** Readings of a role as they were entered, in the unit they were entered in; only of specimens that count. */
const entered = ({ specimens }: Submission, role: string, condition = 'untreated'): number[] =>
  specimens
    .filter((specimen) => specimen.state === 'valid' && specimen.condition === condition)
    .flatMap(({ readings }) => readings.filter((reading) => reading.role === role).map((reading) => Number(reading.entered.text)));

/** One submission of each method stands behind a variant here, so that each figure is a plain mean or a ratio of two. */
const AGAIN: Readonly<Record<string, (submissions: readonly Submission[]) => number>> = {
  [KEYS.force]: ([pull]) => average(entered(pull!, 'breakingForce')) * LBF,
  [KEYS.diameter]: ([gauge]) => average([...entered(gauge!, 'wideDiameter'), ...entered(gauge!, 'narrowDiameter')]),
  [KEYS.stress]: (submissions) => {
    const pull = submissions.find(({ method }) => method === 'straight-pull')!;
    const gauge = submissions.find(({ method }) => method === 'diameter')!;
    const diameterMm = average([...entered(gauge, 'wideDiameter'), ...entered(gauge, 'narrowDiameter')]);
    return (average(entered(pull, 'breakingForce')) * LBF) / ((Math.PI / 4) * diameterMm ** 2);
  },
  [KEYS.knot]: ([knot]) => (100 * average(entered(knot!, 'breakingForce', 'treated'))) / average(entered(knot!, 'breakingForce')),
  [KEYS.abrasion]: ([rubbed]) => (100 * average(entered(rubbed!, 'breakingForce', 'treated'))) / average(entered(rubbed!, 'breakingForce')),
};
/** Half a unit of the last digit printed, which an interval's half width has two of; whole zeros at the end may be such digits. */
const halfStep = ({ value, low, high }: { value: string; low: string | null; high: string | null }): number => {
  const digitOfInterval = 10 ** (Math.floor(Math.log10((Number(high) - Number(low)) / 2)) - 1);
  return Math.max(digitOfInterval, 10 ** -(value.split('.')[1] ?? '').length) / 2;
};
/** [N], exactly (NIST SP 811, appendix B); readings in newtons have 1. */
let LBF = 1;

test('each figure of each variant leads to its readings, and these give it again', async () => {
  const { overall } = await get<EditionDocument>('/v1/editions/2026');
  let walked = 0;
  for (const { variant } of overall) {
    const { figures } = await provenance(variant.slug);
    for (const { quantity, figure, submissions } of figures) {
      const again = AGAIN[quantity];
      if (!again || !figure) continue;
      expect(submissions.length).toBe(quantity === KEYS.stress ? 2 : 1);
      const unit = submissions[0]!.specimens[0]!.readings[0]!.entered.unit;
      LBF = unit === 'lbf' ? 4.4482216152605 : 1;
      const off = Math.abs(again(submissions) - Number(figure.value));
      expect({ variant: variant.slug, quantity, isFar: off > 1.000001 * halfStep(figure) }).toMatchObject({ isFar: false });
      walked += submissions.flatMap(({ specimens }) => specimens).length;
    }
  }
  expect(walked).toBeGreaterThan(150);
});

test('every figure of the standings is there, with instrument and certificate of each submission, and the release that it is of', async () => {
  const { scheme, overall } = await get<EditionDocument>('/v1/editions/2026');
  const { digest } = (await get<{ items: { digest: string }[] }>('/v1/releases')).items[0]!;
  const { slug } = overall[0]!.variant;
  for (const { code, quantity } of scheme.categories) {
    const { rows } = await get<CategoryDocument>(`/v1/editions/2026/standings/${code}`);
    const { release, figures } = await provenance(slug, `?quantity=${quantity}`);
    expect(release).toMatchObject({ edition: '2026', revision: 1, digest });
    expect(sha256((await house.t.call('get', release.manifest).expect(200)).text)).toBe(digest);
    await house.t.call('get', release.document).expect(200);
    expect(figures).toHaveLength(1);
    expect(figures[0]!.figure).toEqual(rows.find(({ variant }) => variant.slug === slug)!.figure);
    for (const { instruments, reference, revision } of figures[0]!.submissions) {
      expect([reference, revision, instruments.length > 0]).toEqual([reference, 1, true]);
      for (const { calibration, code: instrument } of instruments)
        expect(calibration).toMatchObject({ certificate: `C-${instrument}`, expandedUncertaintyPercent: '0.5', coverageFactor: '2' });
    }
  }
});

test('what was not published has no provenance', async () => {
  await house.t.call('get', '/v1/editions/2026/variants/none/provenance').expect(404);
  await house.t.call('get', '/v1/editions/2031/variants/gannet-20/provenance').expect(404);
  expect((await provenance('gannet-20', '?quantity=colour')).figures).toEqual([]);
});
