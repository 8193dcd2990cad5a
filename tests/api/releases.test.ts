import { sha256 } from '../../api/platform/identifiers/identifiers.js';
import { canonicalJson } from '../../api/reckoning/canonical-json.js';
import { citationFiles } from '../../api/reckoning/citation/citation-files.js';
import { computeRelease } from '../../api/reckoning/compute-release.js';
import type { ReleaseInputs } from '../../api/reckoning/release-inputs.js';
import { PublishRelease } from '../../api/releases/publication/publish-release.js';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { SeasonIdentifiers } from '../../prisma/seed/loader/season-identifiers.js';
import { proposeWithdrawal } from '../support/propose.js';
import { createHouse, workEdition } from '../support/house.js';
import type { House } from '../support/house.js';
import { runSql } from '../support/run-sql.js';
import { editionRequest, erratumFor, moveEdition, publish, VARIANTS } from '../support/season.js';
import { ROUTES } from '../rules/route-table.js';

const ERRATUM = { reasonCode: 'withdrawal', words: 'A rig was found bent.' };
const NOWHERE = { ...ERRATUM, expects: [{ where: 'overall, nobody, place', before: '1' }] };
const FIRST = '/v1/releases/2026/1';

let house: House;
beforeAll(async () => {
  house = await createHouse(new SeasonIdentifiers(7));
  await workEdition(house, '2026');
});
afterAll(() => house.t.close());

const order = (erratum: object | null, slug = '2026') => house.editor.call('post', `/v1/editions/${slug}/releases`).send({ erratum });
const sql = (statement: string) => runSql(house.t.databaseUrl, statement);
const work = ({ t }: House) => t.app.select(ReleasesModule).get(ReleaseWork);

/** Bytes of a file of a release, as sent. */
async function bytesOf(path: string, { t } = house): Promise<Buffer> {
  const answer = await t.app.inject({ method: 'GET', url: path });
  if (answer.statusCode !== 200) throw new Error(`${path} was answered by ${answer.statusCode}: ${answer.payload}`);
  return answer.rawPayload;
}
async function filesOf(folder: string): Promise<Map<string, Buffer>> {
  const manifest = JSON.parse((await bytesOf(`${folder}/manifest.json`)).toString()) as { files: { path: string }[] };
  const paths = ['manifest.json', ...manifest.files.map(({ path }) => path)];
  return new Map(await Promise.all(paths.map(async (path) => [path, await bytesOf(`${folder}/${path}`)] as const)));
}

describe('asking for a release', () => {
  test('takes a closed edition, and an erratum never with the first', async () => {
    expect((await order(null).expect(409)).body.code).toBe('releases/edition-not-closed');
    await moveEdition(house.editor, '2026', 'closure');
    await order(null, 'no-edition').expect(404);
    expect((await order(NOWHERE).expect(422)).body.code).toBe('releases/erratum-too-early');
    expect(await sql('SELECT 1 FROM release')).toEqual([]);
  });

  test('gives one order at a time', async () => {
    expect((await order(null).expect(202)).body).toEqual({
      edition: '2026',
      revision: 1,
      state: 'building',
      digest: null,
      publishAt: null,
      order: { state: 'waiting', attempts: 0, words: null, nextAttemptAt: house.t.clock.now().toISOString() },
    });
    expect((await order(null).expect(409)).body.code).toBe('releases/in-progress');
  });
});

const NAMED = new URLSearchParams('edition=2026&revision=1&variant=gannet-20&category=stress&method=straight-pull&number=1&version=1');

test('until it is published nothing of it can be read by anyone', async () => {
  const open = ROUTES.filter(([route, who]) => who === 'anyone' && route.startsWith('GET /v1'));
  const secrets = ['2026/', 'Trials', ...VARIANTS.map(({ slug }) => slug), ...house.codes.values(), 'Marlow'];
  for (const [route] of open) {
    const path = route
      .slice(4)
      .replaceAll(/:(\w+)/g, (_, name: string) => NAMED.get(name) ?? name)
      .replace('*', 'bundle.json');
    const { status, text, body } = await house.t.call('get', path);
    if (status === 200) for (const secret of secrets) expect(text).not.toContain(secret);
    else expect({ path, status, code: body.code }).toEqual({ path, status: 404, code: 'request/not-found' });
  }
  for (const list of ['releases', 'editions']) expect((await house.t.call('get', `/v1/${list}`).expect(200)).body.items).toEqual([]);
});

test('what a worker left half done the next one finishes, and twice is once', async () => {
  const publishing = house.t.app.select(ReleasesModule).get(PublishRelease);
  // Two workers that read the clock at different times must not mix their files.
  const { clock } = house.t;
  const still = clock.now.bind(clock);
  let calls = 0;
  clock.now = () => new Date(clock.time.getTime() + 1000 * calls++);
  await Promise.all([work(house).start(false), publishing.run({ edition: '2026', revision: 1 })]);
  clock.now = still;
  await publishing.run({ edition: '2026', revision: 1 });
  const [release, ...others] = await sql('SELECT state, digest FROM release');
  expect(others).toEqual([]);
  expect(release).toMatchObject({ state: 'published' });
  expect(await sql(`SELECT count(*)::int AS n FROM audit_event WHERE action = 'release.published'`)).toEqual([{ n: 1 }]);
  expect((await house.editor.call('get', '/v1/bench/editions/2026').expect(200)).body.state).toBe('published');
});

test('the digest seals the manifest, the manifest every file, and JSON has its one form', async () => {
  const { body } = await house.t.call('get', '/v1/releases').expect(200);
  const files = await filesOf(FIRST);
  const manifest = files.get('manifest.json')!;
  expect(sha256(manifest)).toBe(body.items[0].digest);
  const listed = JSON.parse(manifest.toString()).files as { path: string; sha256: string; sizeBytes: number }[];
  expect(listed.map(({ path }) => path)).toEqual(expect.arrayContaining(['bundle.json', 'documents/edition.json', 'csv/standings.csv']));
  for (const { path, sha256: digest, sizeBytes } of listed) {
    const bytes = files.get(path)!;
    expect([path, sha256(bytes), bytes.length]).toEqual([path, digest, sizeBytes]);
  }
  for (const [path, bytes] of files)
    if (path.endsWith('.json')) expect(canonicalJson(JSON.parse(bytes.toString())) === bytes.toString()).toBe(true);
});

/** Computes a release anew from the inputs that its bundle carries: nothing else is known. */
function recomputed(files: ReadonlyMap<string, Buffer>): Map<string, string> {
  const { inputs } = JSON.parse(files.get('bundle.json')!.toString()) as { inputs: ReleaseInputs };
  const release = computeRelease(inputs);
  return new Map([...release, ...citationFiles(inputs, release)].map(({ path, content }) => [path, content]));
}

test('every byte follows from the inputs that the bundle carries', async () => {
  const files = await filesOf(FIRST);
  const anew = recomputed(files);
  expect([...anew.keys()].sort()).toEqual(
    [...files.keys()].filter((path) => !['manifest.json', 'verify.mjs', 'release.zip'].includes(path)).sort(),
  );
  for (const [path, content] of anew) expect([path, content === files.get(path)!.toString()]).toEqual([path, true]);
});

test('the record refuses to change or lose what is published', async () => {
  for (const change of [
    "digest = repeat('0', 64)",
    "manifest = '{}'",
    "signature = '{}'",
    'published_at = now()',
    'revision = 2',
    "state = 'building'",
  ])
    await expect(sql(`UPDATE release SET ${change}`)).rejects.toMatchObject({ code: 'FP001' });
  for (const change of ['DELETE FROM release', 'TRUNCATE release CASCADE'])
    await expect(sql(change)).rejects.toMatchObject({ code: 'FP001' });
});

describe('a second revision', () => {
  let before: Map<string, Buffer>;

  test('needs an erratum', async () => {
    before = await filesOf(FIRST);
    const { body } = await house.editor.call('get', '/v1/submissions?edition=2026&limit=200').expect(200);
    const spool = house.codes.get('petrel-40');
    const knot = (body.items as any[]).find((item) => item.spool === spool && item.method.slug === 'named-knot');
    await house.editor
      .call('post', `/v1/submissions/${knot.reference}/withdrawal`)
      .set('If-Match', `"${knot.version}"`)
      .send({ proposal: await proposeWithdrawal(house.reviewer, knot.reference) })
      .expect(201);
    expect((await order(null).expect(422)).body.code).toBe('releases/erratum-needed');
  });

  test('expects what is published, and is refused where that is no longer so', async () => {
    const { body } = await order({
      ...ERRATUM,
      expects: [{ where: 'knot, petrel-40, value', before: '12.3 %' }, ...NOWHERE.expects],
    }).expect(409);
    expect(body.code).toBe('releases/expected-otherwise');
    expect(body.errors).toEqual([
      expect.objectContaining({
        pointer: '/erratum/expects/0',
        detail: expect.stringMatching(/expects "12\.3 %"; published is "\d+\.\d %"/),
      }),
      expect.objectContaining({ pointer: '/erratum/expects/1', detail: expect.stringContaining('no such cell') }),
    ]);
    await order({ ...ERRATUM, expects: [] }).expect(422);
    expect(await sql("SELECT 1 FROM release WHERE state = 'building'")).toEqual([]);
    expect(await publish(house.editor, '2026', await erratumFor(house.editor, '2026', ERRATUM.reasonCode, ERRATUM.words))).toBe(2);
  });

  test('keeps a stone for what was withdrawn', async () => {
    const { body } = await house.t.call('get', '/v1/editions/2026/withdrawn').expect(200);
    expect(body.items).toEqual([
      {
        reference: expect.stringMatching(/\w/),
        variant: 'petrel-40',
        method: 'named-knot',
        tester: 'A. Fenn',
        benchDay: expect.stringMatching(/^2026-/),
        withdrawnOn: house.t.clock.now().toISOString().slice(0, 10),
        reason: 'The rig was bent.',
        citation: expect.stringMatching(/withdrawn on 2026-.*edition 2026, revision 2\.$/),
      },
    ]);
    const variant = (await house.t.call('get', '/v1/editions/2026/variants/petrel-40').expect(200)).body;
    expect(variant.withdrawn).toEqual(body.items);
    expect(variant.submissions.map(({ reference }: any) => reference)).not.toContain(body.items[0].reference);
    const first = JSON.parse((await bytesOf(`${FIRST}/documents/withdrawn.json`)).toString());
    expect(first.items).toEqual([]);
  });

  test('and so does every byte of the second, its erratum too', async () => {
    const files = await filesOf('/v1/releases/2026/2');
    for (const [path, content] of recomputed(files)) expect([path, content === files.get(path)!.toString()]).toEqual([path, true]);
  });

  test('takes the place of the first, which stays as it was, byte for byte', async () => {
    const { body } = await house.t.call('get', '/v1/releases').expect(200);
    expect(body.items.map(({ revision, status }: any) => [revision, status])).toEqual([
      [2, 'published'],
      [1, 'superseded'],
    ]);
    const after = await filesOf(FIRST);
    expect([...after].filter(([path, bytes]) => !bytes.equals(before.get(path)!)).map(([path]) => path)).toEqual([]);
    expect((await house.t.call('get', '/v1/editions').expect(200)).body.items).toHaveLength(1);
    expect((await house.t.call('get', '/v1/editions/2026').expect(200)).body.revision).toBe(2);
    const second = JSON.parse((await bytesOf('/v1/releases/2026/2/manifest.json')).toString());
    expect(second.previousDigest).toBe(sha256(before.get('manifest.json')!));
  });

  test('tells in its erratum each cell that changed, and counts', async () => {
    const [first, second] = await Promise.all([1, 2].map(async (revision) => filesOf(`/v1/releases/2026/${revision}`)));
    const document = (files: Map<string, Buffer>, path: string) => JSON.parse(files.get(`documents/${path}.json`)!.toString());
    const { erratum, incomplete } = document(second!, 'edition');
    expect(incomplete).toMatchObject([{ variant: { slug: 'petrel-40' }, missing: ['knot'] }]);
    expect(erratum).toMatchObject({ ...ERRATUM, expected: [{ where: expect.stringMatching(/^overall/), before: '1' }] });
    expect(erratum.consequences).toMatch(/, top group (un)?changed$/);
    const placesIn = (files: Map<string, Buffer>, path: string, key: string) =>
      new Map<string, number>((document(files, path)[key] as any[]).map(({ variant, place }) => [variant.slug, place]));
    const changed = ['standings/stress', 'standings/knot', 'standings/abrasion', 'edition'].flatMap((path) => {
      const key = path === 'edition' ? 'overall' : 'rows';
      const [old, now] = [placesIn(first!, path, key), placesIn(second!, path, key)];
      return [...new Set([...old.keys(), ...now.keys()])]
        .filter((slug) => old.get(slug) !== now.get(slug))
        .map((slug) => `${path} ${slug}`);
    });
    expect(changed.length).toBeGreaterThan(2);
    expect(erratum.consequences).toContain(`1 value changed, ${changed.length} places changed`);
    const value = document(first!, 'standings/knot').rows.find((row: any) => row.variant.slug === 'petrel-40').figure;
    expect(erratum.changes).toContainEqual({ where: 'knot, petrel-40, value', before: `${value.value} ${value.unit}`, after: null });
  });
});

test('an edition without standings is not published', async () => {
  await house.editor.call('post', '/v1/editions').send(editionRequest('empty-2027')).expect(201);
  await house.editor
    .call('post', '/v1/editions/empty-2027/entries')
    .send({ variants: ['gannet-20'] })
    .expect(201);
  await moveEdition(house.editor, 'empty-2027', 'opening');
  await moveEdition(house.editor, 'empty-2027', 'closure');
  await order(null, 'empty-2027').expect(202);
  const publishing = house.t.app.select(ReleasesModule).get(PublishRelease);
  await expect(publishing.run({ edition: 'empty-2027', revision: 1 })).rejects.toMatchObject({ kind: { code: 'releases/no-standings' } });
  await house.t.call('get', '/v1/editions/empty-2027').expect(404);
  // It does not hold up the work on others, and can be called off.
  await work(house).publishDue();
  await house.editor.call('delete', '/v1/editions/empty-2027/releases/1').expect(204);
});

describe('a release that waits for its time', () => {
  const later = (minutes: number) => new Date(house.t.clock.now().getTime() + 60_000 * minutes).toISOString();
  const orderAt = async (publishAt: string) =>
    house.editor
      .call('post', '/v1/editions/2026/releases')
      .send({ erratum: await erratumFor(house.editor, '2026', ERRATUM.reasonCode, ERRATUM.words), publishAt });

  test('is for a time to come', async () => {
    const { status, body } = await orderAt(later(-1));
    expect([status, body.code]).toEqual([422, 'releases/not-in-future']);
  });

  test('is seen by nobody before, and published when the time has come', async () => {
    const publishAt = later(30);
    expect((await orderAt(publishAt)).body).toMatchObject({ revision: 3, state: 'building', publishAt });
    const look = async () => {
      await work(house).publishDue();
      return (await house.t.call('get', '/v1/releases').expect(200)).body.items[0].revision;
    };
    expect(await look()).toBe(2);
    expect((await house.t.call('get', '/v1/releases/2026/3/manifest.json')).status).toBe(404);
    house.t.clock.time = new Date(Date.parse(publishAt) + 1000);
    expect(await look()).toBe(3);
    const { inputs } = JSON.parse((await bytesOf('/v1/releases/2026/3/bundle.json')).toString()) as { inputs: ReleaseInputs };
    expect(inputs.correction!.corrected).toContain('knot, petrel-40, value');
  });

  test('is called off while it waits, and not after', async () => {
    expect((await orderAt(later(60))).body).toMatchObject({ revision: 4 });
    const callOff = (revision: number) => house.editor.call('delete', `/v1/editions/2026/releases/${revision}`);
    await callOff(9).expect(404);
    await callOff(4).expect(204);
    await callOff(4).expect(404);
    expect((await callOff(3).expect(409)).body.code).toBe('releases/not-waiting');
    const { items } = (await (await house.t.caller(['admin'])).call('get', '/v1/audit?limit=5').expect(200)).body;
    expect(items.map(({ action }: any) => action)).toContain('release.calledOff');
  });

  test('while one that does not wait is never taken away, not even by plain SQL', async () => {
    await expect(sql("DELETE FROM release WHERE state = 'published'")).rejects.toMatchObject({ code: 'FP001' });
  });
});
