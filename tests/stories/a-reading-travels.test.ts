import { findFreePort } from '../../api/platform/embedded-postgres/free-port.js';
import { BuildSite } from '../../api/releases/site/build-site.js';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { csvFile, diameterRows, inventPullsOf, inventPieces, pullRows } from '../support/hand-in-csv.js';
import type { Piece, Pull } from '../support/hand-in-csv.js';
import { acceptAll, fitOutHouse, moveEdition, openEdition, publish, VARIANTS } from '../support/season.js';
import type { InventedVariant, MethodSlug } from '../support/season.js';
import { createTestApplication } from '../support/test-application.js';
import type { Caller, TestApplication } from '../support/test-application.js';

/** Kilogram-force in newtons, exact (NIST SP 811, appendix B.8). */
const KGF_N = 9.80665;
const EDITION = '2026';
const SLIPPED = 'gannet-30';
const LEFT_OUT = 'petrel-20';
const LOOKED_UP = 'petrel-40';

let t: TestApplication;
let editor: Caller;
let reviewer: Caller;
let testers: Caller[];
let codes: Map<string, string>;

/** The raw readings, as the test knows them: the page is held against these alone. */
const straight = new Map<string, { pulls: Pull[]; newtonsPerUnit: number }>();
const pieces = new Map<string, Piece[]>();
const compared = new Map<string, Pull[]>();

beforeAll(async () => {
  const url = `http://127.0.0.1:${await findFreePort()}`;
  t = await createTestApplication({ PUBLIC_URL: url, HOUSE_CONTACT: 'errors@trials.example' });
  await t.app.listen(Number(new URL(url).port), '127.0.0.1');
  await t.app.select(ReleasesModule).get(ReleaseWork).start(false);
  editor = await t.caller(['editor'], 'E. Sallow');
  reviewer = await t.caller(['reviewer'], 'R. Dunlin');
  testers = [];
  for (const name of ['A. Fenn', 'B. Holm', 'C. Reed', 'D. Skerry']) testers.push(await t.caller(['tester'], name));
  // As in a small house: who looks after the catalogue pulls too.
  testers.push(await t.caller(['tester', 'editor'], 'F. Tarn'));
  codes = await fitOutHouse(editor);
  await openEdition(
    editor,
    EDITION,
    VARIANTS.map(({ slug }) => slug),
  );
});
afterAll(() => t.close());

const at = (slug: string, instrument: string) => ({ edition: EDITION, spool: codes.get(slug)!, instrument });
const handIn = (tester: Caller, rows: string[]) =>
  tester.call('post', '/v1/submissions').set('Content-Type', 'text/csv').send(csvFile(rows)).expect(201);

/** One pull for each variant on a rig, written down in its display's unit. */
function straightRows(variants: readonly InventedVariant[], rig: string, unit: string, newtonsPerUnit: number): string[] {
  return variants.flatMap((variant, i) => {
    const pulls = inventPullsOf(variant, 'straight-pull', i, newtonsPerUnit);
    straight.set(variant.slug, { pulls, newtonsPerUnit });
    return pullRows(at(variant.slug, rig), 'straight-pull', pulls, variant.slug === SLIPPED ? 'lbf' : unit);
  });
}

function comparedRows(method: MethodSlug, rig: string): string[] {
  return VARIANTS.flatMap((variant, i) => {
    const pulls = inventPullsOf(variant, method, i + 11);
    compared.set(`${method} ${variant.slug}`, pulls);
    return pullRows(at(variant.slug, rig), method, pulls);
  });
}

test('five testers hand in files of four methods from two rigs, one of them after looking up what a spool is', async () => {
  await testers[4]!.call('get', `/v1/catalogue/spools/${codes.get(LOOKED_UP)}`).expect(200);
  const answers = [
    await handIn(testers[0]!, straightRows(VARIANTS.slice(0, 3), 'R1', 'kgf', KGF_N)),
    await handIn(testers[1]!, straightRows(VARIANTS.slice(3), 'R2', 'N', 1)),
    await handIn(
      testers[2]!,
      VARIANTS.flatMap((variant, i) => {
        pieces.set(variant.slug, inventPieces(variant, i));
        return diameterRows(at(variant.slug, 'M1'), pieces.get(variant.slug)!);
      }),
    ),
    await handIn(testers[3]!, comparedRows('named-knot', 'R1')),
    await handIn(testers[4]!, comparedRows('abrasion', 'R2')),
  ];
  expect(answers.map(({ body }) => body.submissions.length)).toEqual([3, 2, 5, 5, 5]);
});

const slipped = async (who: Caller): Promise<any> => {
  const { body } = await who.call('get', `/v1/submissions?edition=${EDITION}&limit=200`).expect(200);
  const own = (body.items as { spool: string; reference: string; method: { slug: string } }[]).find(
    ({ spool, method }) => spool === codes.get(SLIPPED) && method.slug === 'straight-pull',
  );
  return (await who.call('get', `/v1/submissions/${own!.reference}`).expect(200)).body;
};

test('pounds written for kilograms are held, the reviewer asks, the tester corrects', async () => {
  const found = await slipped(reviewer);
  const slip = found.findings.find(({ code }: { code: string }) => code === 'figures/unit-slip');
  expect(slip).toMatchObject({ severity: 'held', resolution: null });
  const review = (body: object) =>
    reviewer.call('post', `/v1/submissions/${found.reference}/reviews`).set('If-Match', `"${found.version}"`).send(body);
  await review({ decision: 'accepted' }).expect(422);
  await review({ decision: 'returned', query: { specimens: [1, 2], question: 'Which unit did the display show?' } }).expect(201);
  const asked = await testers[0]!.call('get', '/v1/queries').expect(200);
  const [query] = asked.body.items as { id: string; submission: string }[];
  expect(query).toMatchObject({ submission: found.reference, specimens: [1, 2], answer: null });
  await testers[0]!.call('post', `/v1/queries/${query!.id}/answer`).send({ answer: 'Kilograms-force.' }).expect(201);
  const own = await slipped(testers[0]!);
  const pulls = straight.get(SLIPPED)!.pulls;
  const corrected = {
    edition: EDITION,
    spool: codes.get(SLIPPED),
    method: 'straight-pull',
    methodVersion: 1,
    benchDay: own.benchDay,
    zone: own.zone,
    instruments: ['R1'],
    ambient: { temperature: { value: '21.5', unit: '°C' }, humidityPercent: '55' },
    specimens: pulls.map(({ number, text }) => ({ number, readings: [{ role: 'breakingForce', value: text, unit: 'kgf' }] })),
  };
  const again = await testers[0]!
    .call('post', `/v1/submissions/${own.reference}/revisions`)
    .set('If-Match', `"${own.version}"`)
    .send(corrected)
    .expect(201);
  expect(again.body).toMatchObject({ state: 'submitted', revision: 2 });
  const codesFound = (await slipped(reviewer)).findings.map(({ code }: { code: string }) => code);
  expect(codesFound).not.toContain('figures/unit-slip');
});

test('all is accepted, one variant is left out with a reason, the edition is published', async () => {
  await acceptAll(reviewer, EDITION);
  const { body } = await editor.call('get', `/v1/editions/${EDITION}/board`).expect(200);
  expect(body.submissions).toMatchObject({ accepted: 20, submitted: 0, returned: 0 });
  await moveEdition(editor, EDITION, 'closure');
  await editor
    .call('post', `/v1/editions/${EDITION}/exclusions`)
    .send({ variant: LEFT_OUT, reasonCode: 'notObtainable', words: 'No longer sold anywhere.', effect: 'shownUnplaced' })
    .expect(201);
  await t.call('get', `/v1/editions/${EDITION}`).expect(404);
  expect(await publish(editor, EDITION)).toBe(1);
  await t.app.select(ReleasesModule).get(BuildSite).run();
});

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
const meanForce = (pulls: readonly Pull[], condition: Pull['condition']): number =>
  mean(pulls.filter((pull) => pull.condition === condition).map(({ text }) => Number(text)));

/** Value of each category as published, from the raw readings alone. */
function valuesOf(slug: string): number[] {
  const { pulls, newtonsPerUnit } = straight.get(slug)!;
  const diameterMm = mean(pieces.get(slug)!.map(({ wideMm, narrowMm }) => (Number(wideMm) + Number(narrowMm)) / 2));
  const stressMPa = (meanForce(pulls, 'untreated') * newtonsPerUnit) / ((Math.PI / 4) * diameterMm ** 2);
  const kept = (['named-knot', 'abrasion'] as const).map((method) => {
    const both = compared.get(`${method} ${slug}`)!;
    return Number(((100 * meanForce(both, 'treated')) / meanForce(both, 'untreated')).toFixed(1));
  });
  return [Math.round(stressMPa), ...kept];
}

/** Competition places (1-2-2-4). */
const placesIn = (values: readonly number[], isBetter: (a: number, b: number) => boolean): number[] =>
  values.map((value) => 1 + values.filter((other) => isBetter(other, value)).length);

/** Rows of the overall table as they should read: place, score, places by category. */
function expectedRows(): Map<string, string> {
  const slugs = VARIANTS.map(({ slug }) => slug);
  const values = slugs.map(valuesOf);
  const byCategory = [0, 1, 2].map((category) =>
    placesIn(
      values.map((row) => row[category]!),
      (a, b) => a > b,
    ),
  );
  const sums = slugs.map((_, i) => byCategory.reduce((sum, places) => sum + places[i]!, 0));
  const counted = sums.filter((_, i) => slugs[i] !== LEFT_OUT);
  const placeAmong = (score: number, scores: readonly number[]) => 1 + scores.filter((other) => other < score).length;
  return new Map(
    slugs.map((slug, i) => {
      const place = placeAmong(sums[i]!, counted);
      const isShared = slug !== LEFT_OUT && counted.filter((score) => score === sums[i]).length > 1;
      const shown = slug === LEFT_OUT ? `(${place})` : `${place}${isShared ? '=' : ''}`;
      return [slug, [shown, sums[i], ...byCategory.map((places) => places[i])].join(' ')];
    }),
  );
}

const words = (html: string): string =>
  html
    .replace(/<span class="only-heard">[^<]*<\/span>/g, '')
    .replace(/<[^>]*>/g, '')
    .replace(/\s+/g, '');

/** Rows of the overall table as the page shows them, by variant. */
function rowsOnPage(html: string): Map<string, string> {
  const table = /<table class="sheet overall[^"]*"[\s\S]*?<\/table>/.exec(html)?.[0] ?? '';
  const rows = [...table.matchAll(/<tr\b[\s\S]*?<\/tr>/g)].map(([row]) => row).filter((row) => row.includes('data-label="Place"'));
  return new Map(
    rows.map((row) => {
      const cells = [...row.matchAll(/<td\b[^>]*data-label="([^"]*)"[^>]*>([\s\S]*?)<\/td>/g)];
      const wanted = cells.filter(([, label = '']) => label === 'Place' || label === 'Score' || label.endsWith(', place'));
      return [/variants\/([a-z0-9-]+)\//.exec(row)?.[1] ?? 'none', wanted.map(([, , cell = '']) => words(cell)).join(' ')];
    }),
  );
}

test('the page shows the order that the raw readings give', async () => {
  const { text } = await t.call('get', `/editions/${EDITION}/`).expect(200);
  const shown = rowsOnPage(text);
  const expected = expectedRows();
  expect(Object.fromEntries(shown)).toEqual(Object.fromEntries(expected));
  const order = [...shown.values()].map((row) => Number(/\d+/.exec(row)?.[0]));
  expect(order).toEqual([...order].sort((a, b) => a - b));
  expect(text).toContain('No longer sold anywhere.');
});

test('what was not tested blind is told on the page of its variant, and on no other', async () => {
  const pageOf = async (slug: string) => (await t.call('get', `/variants/${slug}/`).expect(200)).text;
  expect((await pageOf(LOOKED_UP)).match(/, not blind/g)).toHaveLength(1);
  expect(await pageOf(LOOKED_UP)).toContain('The tester had seen the label or read what the spool is');
  expect(await pageOf(SLIPPED)).not.toContain('not blind');
});

test('a reader who doubts it finds where to write', async () => {
  const { text } = await t.call('get', '/read/report-an-error/').expect(200);
  expect(text).toContain('<a href="mailto:errors@trials.example">errors@trials.example</a>');
});
