import type { RetestsDocument } from '../../api/contract/documents/retests-document.js';
import { pairedReproducibility } from '../../api/measurement/agreement/paired-reproducibility.js';
import { sha256 } from '../../api/platform/identifiers/identifiers.js';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { csvFile, inventPullsOf, pullRows } from '../support/hand-in-csv.js';
import { createHouse, handInEdition } from '../support/house.js';
import type { House } from '../support/house.js';
import { runSql } from '../support/run-sql.js';
import { acceptAll, moveEdition, openEdition, publish, VARIANTS } from '../support/season.js';
import type { Caller } from '../support/test-application.js';

let house: House;
let other: Caller;
let items: { original: string; spool: string; method: string; isDone: boolean }[];
let seed: string;

beforeAll(async () => {
  house = await createHouse();
  other = await house.t.caller(['tester'], 'B. Fenwick');
  await openEdition(
    house.editor,
    '2026',
    VARIANTS.map(({ slug }) => slug),
  );
  await handInEdition(house, '2026');
});
afterAll(() => house.t.close());

const draw = (by: Caller, percent: number) => by.call('post', '/v1/editions/2026/retests').send({ percent });
const codeOf = (spool: string) => VARIANTS.find(({ slug }) => house.codes.get(slug) === spool);
const again = (by: Caller, { spool, method }: { spool: string; method: string }, instrument: string, factor = 1) => {
  const variant = VARIANTS[0]!;
  const pulls = inventPullsOf({ ...variant, forceN: variant.forceN * factor }, method as 'straight-pull', 11);
  const file = csvFile(pullRows({ edition: '2026', spool, instrument }, method as 'straight-pull', pulls));
  return by.call('post', '/v1/submissions').set('Content-Type', 'text/csv').send(file);
};

test('nothing is drawn before anything is accepted; then once, by a seed that was fixed at the opening, and anybody can draw again', async () => {
  expect((await draw(house.editor, 20).expect(409)).body.code).toBe('retests/nothing-to-draw');
  await acceptAll(house.reviewer, '2026');
  await draw(house.editor, 0).expect(422);
  await draw(house.reviewer, 20).expect(403);
  const retired = house.codes.get(VARIANTS.at(-1)!.slug)!;
  await house.editor
    .call('post', `/v1/catalogue/spools/${retired}/retirement`)
    .set('If-Match', '"1"')
    .send({ reason: 'Pulled to its end.' })
    .expect(201);
  const shelf = () => other.call('get', '/v1/spools').expect(200);
  const before = await shelf();
  const drawn = await draw(house.editor, 20).expect(201);
  // Whoever compares the list from before with the one after learns nothing.
  expect((await shelf()).text).toBe(before.text);
  ({ items, seed } = drawn.body as { items: typeof items; seed: string });
  const { items: sealed } = (await house.t.call('get', '/v1/commitments').expect(200)).body as { items: { blindKeyDigest: string }[] };
  expect(seed).toBe(sha256(`${sealed[0]!.blindKeyDigest} 2026`));
  const accepted = (await house.reviewer.call('get', '/v1/submissions?edition=2026&state=accepted&limit=200').expect(200)).body.items as {
    reference: string;
    spool: string;
    method: { slug: string };
  }[];
  // A spool that is out of use has nothing left to pull.
  const from = accepted.filter(({ spool, method }) => spool !== retired && method.slug !== 'diameter').map(({ reference }) => reference);
  const byMark = from.toSorted((one, two) => (sha256(`${seed} ${one}`) < sha256(`${seed} ${two}`) ? -1 : 1));
  expect(items.map(({ original }) => original)).toEqual(byMark.slice(0, 3));
  expect((await draw(house.editor, 90).expect(409)).body.code).toBe('retests/drawn');
});

test('it comes back as a spool like any other, to another tester on another rig; nothing says that it is a second time', async () => {
  const [first] = items;
  const own = await again(house.tester, first!, 'R2').expect(201);
  const sameRig = await again(other, first!, 'R1', 1.01).expect(201);
  for (const [{ text, body }, words] of [
    [own, 'its tester pulled it the first time'],
    [sameRig, 'R1 pulled it the first time'],
  ] as const) {
    expect(text).not.toMatch(/re-?test|again|second time|same-hands/i);
    const [{ reference }] = (body as { submissions: [{ reference: string }] }).submissions;
    const seen = await house.reviewer.call('get', `/v1/submissions/${reference}`).expect(200);
    const { id, severity, message } = (seen.body.findings as { id: string; code: string; severity: string; message: string }[]).find(
      ({ code }) => code === 'retest/same-hands',
    )!;
    expect([severity, message]).toEqual(['held', expect.stringContaining(words)]);
    expect(id).not.toBeNull();
    const decide = (decision: object) =>
      house.reviewer.call('post', `/v1/submissions/${reference}/reviews`).set('If-Match', '"1"').send(decision);
    const held = (seen.body.findings as { id: string; severity: string }[]).filter((finding) => finding.severity === 'held');
    const resolutions = held.map((finding) => ({ finding: finding.id, words: 'Looked at; the readings stand.' }));
    // Not even a reviewer who looks away makes the first tester's own the second opinion.
    if (words.startsWith('its')) expect((await decide({ decision: 'accepted', resolutions }).expect(409)).text).toContain('Another tester');
    await decide({ decision: 'refused', reason: 'Somebody else is to test it on another rig.' }).expect(201);
  }
  for (const one of items) await again(other, one, 'R2', 1.02).expect(201);
  for (const table of ['retest', 'retest_draw'])
    await expect(runSql(house.t.databaseUrl, `DELETE FROM ${table}`)).rejects.toThrow(/append_only/);
});

test('what is found again enters no value; the release tells how far it differs', async () => {
  await acceptAll(house.reviewer, '2026');
  const listed = (await house.editor.call('get', '/v1/editions/2026/retests').expect(200)).body as { items: typeof items };
  expect(listed.items.every(({ isDone }) => isDone)).toBe(true);
  await moveEdition(house.editor, '2026', 'closure');
  await house.t.app.select(ReleasesModule).get(ReleaseWork).start(false);
  await publish(house.editor, '2026');
  const document = (await house.t.call('get', '/v1/editions/2026/retest-results').expect(200)).body as RetestsDocument;
  expect(document.draw).toMatchObject({ seed, percent: '20' });
  expect(document.pairs.map(({ original }) => original)).toEqual(items.map(({ original }) => original));
  for (const { first, second, differencePercent } of document.pairs)
    expect(Number(differencePercent)).toBeCloseTo(100 * (Number(second) / Number(first) - 1), 0);
  for (const { method, pairs, relativePercent } of document.reproducibility) {
    const own = document.pairs.filter((pair) => pair.method === method);
    const { relativeSd } = pairedReproducibility(own.map(({ first, second }) => [Number(first), Number(second)] as const));
    expect([method, pairs, Number(relativePercent)]).toEqual([method, own.length, expect.closeTo(100 * relativeSd, 0)]);
  }
  const edition = await house.t.call('get', '/v1/releases/2026/1/bundle.json').expect(200);
  const { submissions } = (JSON.parse(edition.text) as { inputs: { evidence: { submissions: { reference: string }[] } } }).inputs.evidence;
  expect(
    submissions.map(({ reference }) => reference).filter((reference) => document.pairs.some((pair) => pair.again === reference)),
  ).toEqual([]);
  expect(codeOf(items[0]!.spool)).toBeUndefined();
});
