/** Whoever has read what tells of a spool is known to have; what they hand in on it is marked not blind. */
import { ROUTES } from '../rules/route-table.js';
import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import { LINE, MAKER, OTHER_VARIANT, SPOOL, VARIANT } from '../support/catalogue-fixtures.js';
import type { Caller } from '../support/test-application.js';
import { FORCE_SCHEME } from '../support/season.js';

let b: Bench;
beforeAll(async () => {
  b = await setUpBench(undefined, FORCE_SCHEME.rules);
});
afterAll(() => b.t.close());

interface HandedIn {
  reference: string;
  isBlind: boolean;
  findings: { id: string; code: string; severity: string; message: string }[];
}

const newSpool = async (): Promise<string> =>
  (
    await b.editor
      .call('post', '/v1/catalogue/spools')
      .send({ ...SPOOL, variant: OTHER_VARIANT.slug })
      .expect(201)
  ).body.blindCode as string;
const handIn = async (by: Caller, spool: string, change: object = {}): Promise<HandedIn> =>
  (await by.call('post', '/v1/submissions').send(contentFor(spool, change)).expect(201)).body as HandedIn;
const readingsOf = async ({ accountId }: Caller, spool: string): Promise<string[]> =>
  (
    await b.sql(
      `SELECT k.how FROM key_reading k JOIN spool p ON p.id = k.spool_id WHERE k.account_id = $1 AND p.blind_code = $2 ORDER BY 1`,
      [accountId, spool],
    )
  ).map(({ how }) => how as string);

let count = 0;

/** What somebody in two roles can do that tells of a spool, and what is on record then. */
/** Says that a spool is another variant; whoever says it once more is told that it is said. */
const say = async (one: Caller, spool: string): Promise<void> => {
  const request = { kind: 'reidentification', spool, variant: VARIANT.slug, reason: 'The box holds another line.' };
  const { status } = await one.call('post', '/v1/proposals').send(request);
  expect([201, 409]).toContain(status);
};

const WAYS: readonly (readonly [what: string, how: string, act: (one: Caller, spool: string) => Promise<unknown>])[] = [
  ['reads the spool', 'key', (one, spool) => one.call('get', `/v1/catalogue/spools/${spool}`).expect(200)],
  ['lists the spools', 'key', (one) => one.call('get', '/v1/catalogue/spools?limit=200').expect(200)],
  ['makes its label', 'label', (one, spool) => one.call('get', `/v1/catalogue/labels?code=${spool}`).expect(200)],
  ['says what it is', 'key', (one, spool) => say(one, spool)],
  [
    'reads a proposal that says what it is',
    'key',
    async (one, spool) => {
      await say(b.editor, spool);
      await one.call('get', '/v1/proposals').expect(200);
    },
  ],
  [
    'reviews it as handed in by another',
    'results',
    async (one, spool) => {
      const { reference } = await handIn(b.tester, spool, { specimens: pulls(70 + (count += 1)) });
      await one.call('get', `/v1/submissions/${reference}`).expect(200);
    },
  ],
  [
    'reads the queue of reviews',
    'results',
    async (one, spool) => {
      await handIn(b.tester, spool, { specimens: pulls(70 + (count += 1)) });
      await one.call('get', '/v1/review-queue?limit=100').expect(200);
    },
  ],
  ['reads the audit trail', 'key', (one, spool) => one.call('get', `/v1/audit?objectType=spool&objectId=${spool}`).expect(200)],
];

let person: Promise<Caller> | undefined;
const inEveryRole = () => (person ??= b.t.caller(['tester', 'reviewer', 'editor', 'admin'], 'S. House'));

test.each(WAYS)('who %s is known to have (%s), and hands it in as not blind', async (_, how, act) => {
  const [one, spool] = [await inEveryRole(), await newSpool()];
  expect(await readingsOf(one, spool)).toEqual([]);
  await act(one, spool);
  expect(await readingsOf(one, spool)).toEqual([how]);
  const handedIn = await handIn(one, spool);
  expect(handedIn.isBlind).toBe(false);
  expect(handedIn.findings.filter(({ code }) => code === 'tester/not-blind')).toMatchObject([{ severity: 'held' }]);
  // Once is enough, and what was read is read for ever.
  await act(one, spool);
  expect(await readingsOf(one, spool)).toEqual([how]);
  await expect(b.sql('DELETE FROM key_reading')).rejects.toThrow(/append_only/);
});

test('the same person hands in blind what they have read nothing of, and what is their own', async () => {
  const [one, spool] = [await inEveryRole(), await newSpool()];
  const first = await handIn(one, spool);
  expect(first.isBlind).toBe(true);
  await one.call('get', `/v1/submissions/${first.reference}`).expect(200);
  await one.call('get', '/v1/spools?limit=200').expect(200);
  expect(await readingsOf(one, spool)).toEqual([]);
  const again = await handIn(one, spool, { benchDay: '2026-03-11', specimens: pulls(91) });
  expect(again).toMatchObject({ isBlind: true });
  expect(again.findings.map(({ code }) => code)).not.toContain('tester/not-blind');
});

test('who has seen the label says so, and is not blind either', async () => {
  expect(await handIn(b.otherTester, await newSpool(), { seenLabel: true })).toMatchObject({ isBlind: false });
});

test('a draft that comes to another spool is marked by the spool that is handed in', async () => {
  const [one, read, unread] = [await inEveryRole(), await newSpool(), await newSpool()];
  await one.call('get', `/v1/catalogue/spools/${read}`).expect(200);
  const draft = (
    await one
      .call('post', '/v1/drafts')
      .send({ content: contentFor(read) })
      .expect(201)
  ).body as HandedIn;
  const handedIn = await one
    .call('post', `/v1/submissions/${draft.reference}/revisions`)
    .set('If-Match', '"1"')
    .send(contentFor(unread))
    .expect(201);
  expect(handedIn.body).toMatchObject({ isBlind: true });
});

test('the reviewer answers it before it counts, and the record itself lets nothing pass unmarked', async () => {
  const [one, spool] = [await inEveryRole(), await newSpool()];
  await one.call('get', `/v1/catalogue/spools/${spool}`).expect(200);
  const { reference } = await handIn(one, spool);
  const decide = (resolutions: object[]) =>
    b.reviewer.call('post', `/v1/submissions/${reference}/reviews`).set('If-Match', '"1"').send({ decision: 'accepted', resolutions });
  await decide([]).expect(422);
  const seen = (await b.reviewer.call('get', `/v1/submissions/${reference}`).expect(200)).body as HandedIn;
  const held = seen.findings.filter(({ severity }) => severity === 'held');
  expect(held.map(({ code }) => code)).toContain('tester/not-blind');
  await decide(held.map(({ id }) => ({ finding: id, words: 'Nobody else is here; the readings stand.' }))).expect(201);
  const copy = `INSERT INTO submission_revision (id, submission_id, number, handed_in_at, zone, temperature_text, temperature_unit, temperature_c,
      humidity_percent, has_seen_label, is_blind, readings_digest, check_set_version, figures)
    SELECT gen_random_uuid(), r.submission_id, 9, now(), zone, temperature_text, temperature_unit, temperature_c,
      humidity_percent, has_seen_label, true, readings_digest, check_set_version, figures
    FROM submission_revision r JOIN submission s ON s.id = r.submission_id WHERE s.reference = '${reference}'`;
  await expect(b.sql(copy)).rejects.toThrow(/not_blind_is_marked/);
});

test('previews of a spool are counted for each tester, and stand on the audit trail each time that their number has doubled', async () => {
  const [spool, admin] = [await newSpool(), await b.t.caller(['admin'])];
  for (let time = 1; time <= 5; time++)
    await b.tester
      .call('post', '/v1/submissions/preview')
      .send(contentFor(spool, { specimens: pulls(80 + time) }))
      .expect(200);
  const counted = `SELECT v.count FROM spool_previews v JOIN spool p ON p.id = v.spool_id WHERE p.blind_code = $1`;
  expect(await b.sql(counted, [spool])).toEqual([{ count: 5 }]);
  const trail = await admin.call('get', `/v1/audit?objectType=spool&objectId=${spool}`).expect(200);
  const told = (trail.body.items as { action: string; actorId: string; after: unknown }[]).filter(
    ({ action }) => action === 'spool.previewed',
  );
  expect(told.map(({ actorId, after }) => [actorId, after])).toEqual([4, 2, 1].map((previews) => [b.tester.accountId, { previews }]));
});

test('acts that answer what a spool is are on record as reading it: putting it on the shelf, correcting, retiring, previewing', async () => {
  const spool = await newSpool();
  const acts: readonly (readonly [what: string, act: (one: Caller, version: number) => Promise<{ text: string; body: object }>])[] = [
    [
      'shelf',
      async (one) =>
        one
          .call('post', '/v1/catalogue/spools')
          .send({ ...SPOOL, variant: OTHER_VARIANT.slug })
          .expect(201),
    ],
    [
      'correct',
      async (one, v) => one.call('patch', `/v1/catalogue/spools/${spool}`).set('If-Match', `"${v}"`).send({ lot: 'L-9' }).expect(200),
    ],
    [
      'retire',
      async (one, v) =>
        one.call('post', `/v1/catalogue/spools/${spool}/retirement`).set('If-Match', `"${v}"`).send({ reason: 'Wet.' }).expect(201),
    ],
  ];
  for (const [what, act] of acts) {
    const one = await b.t.caller(['tester', 'editor']);
    const { version } = (await b.editor.call('get', `/v1/catalogue/spools/${spool}`).expect(200)).body as { version: number };
    const { text, body } = await act(one, version);
    const isTold = TELLING.some((word) => text.includes(word));
    expect([what, isTold]).toEqual([what, true]);
    expect([what, await readingsOf(one, (body as { blindCode: string }).blindCode)]).toEqual([what, ['key']]);
  }
  const shown = await newSpool();
  const { reference } = await handIn(b.tester, shown, { specimens: pulls(77) });
  const { findings } = (await b.reviewer.call('get', `/v1/submissions/${reference}`).expect(200)).body as HandedIn;
  const resolutions = findings.filter(({ severity }) => severity === 'held').map(({ id }) => ({ finding: id, words: 'Stands.' }));
  const decision = { decision: 'accepted', resolutions };
  await b.reviewer.call('post', `/v1/submissions/${reference}/reviews`).set('If-Match', '"1"').send(decision).expect(201);
  const change = { lot: 'L-8', reason: 'Read again on the box.' };
  await b.editor.call('patch', `/v1/catalogue/spools/${shown}`).set('If-Match', '"1"').send(change).expect(200);
  const one = await b.t.caller(['tester', 'editor']);
  await one.call('post', '/v1/editions/2026/previews').expect(201);
  expect(await readingsOf(one, shown)).toEqual(['key']);
});

/** Words that say what the spools of the bench are. */
const TELLING = [LINE.name, LINE.slug, VARIANT.slug, OTHER_VARIANT.slug, MAKER.name];

test('no answer ties a code to a line without that being on record: every reading route, by reviewer, editor and admin', async () => {
  const { reference } = await handIn(b.tester, b.spool, { specimens: pulls(395) });
  const fill = (route: string) =>
    route
      .slice(4)
      .replace(/audit$/, 'audit?objectType=spool&limit=200')
      .replace(/\/:code$/, `/${route.includes('spools') ? b.spool : 'R1'}`)
      .replace(':code', 'R1')
      .replace(':reference', reference)
      .replace(':slug', route.includes('variants') ? VARIANT.slug : route.includes('lines') ? LINE.slug : 'straight-pull')
      .replace(':edition', '2026')
      .replace(':number', '1');
  const telling: string[] = [];
  for (const role of ['reviewer', 'editor', 'admin'] as const) {
    const scout = await b.t.caller([role]);
    const routes = ROUTES.filter(
      ([route, who]) =>
        route.startsWith('GET /v1/') && (who === 'signedIn' || who.split(' ').includes(role)) && !/:(id|specimen|secret)/.test(route),
    );
    for (const [route] of routes) {
      const { text } = await scout.call('get', fill(route)).buffer(true);
      if (!(text.includes(b.spool) && TELLING.some((word) => text.includes(word)))) continue;
      const reader = await b.t.caller([role]);
      await reader.call('get', fill(route));
      telling.push(route);
      expect([route, role, (await readingsOf(reader, b.spool)).length]).toEqual([route, role, 1]);
    }
  }
  expect(telling).toEqual(expect.arrayContaining(['GET /v1/catalogue/spools', 'GET /v1/catalogue/spools/:code', 'GET /v1/audit']));
});
