import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import { MAKER, OTHER_VARIANT } from '../support/catalogue-fixtures.js';
import { insertEdition } from '../support/insert-edition.js';
import { proposeReidentification, proposeWithdrawal } from '../support/propose.js';
import { FORCE_SCHEME } from '../support/season.js';
import type { Caller } from '../support/test-application.js';

let b: Bench;
let force = 40;
beforeAll(async () => {
  b = await setUpBench();
});
afterAll(() => b.t.close());

interface Item {
  code: string;
  role: string;
  count: number;
  references: string[];
  what: string;
  where: string;
}
const inboxOf = async (by: Caller): Promise<Record<string, Item>> => {
  const { items } = (await by.call('get', '/v1/inbox').expect(200)).body as { items: Item[] };
  expect(items.every(({ what, where, count }) => what !== '' && where.includes(' ') && count > 0)).toBe(true);
  return Object.fromEntries(items.map((item) => [item.code, item]));
};
const refs = async (by: Caller, code: string) => (await inboxOf(by))[code]?.references ?? [];

async function handIn(by: Caller = b.tester): Promise<string> {
  force += 3;
  return (
    await by
      .call('post', '/v1/submissions')
      .send(contentFor(b.spool, { specimens: pulls(force) }))
      .expect(201)
  ).body.reference;
}
async function decide(reference: string, decision: object): Promise<number> {
  const { body } = await b.reviewer.call('get', `/v1/submissions/${reference}`).expect(200);
  const resolutions = (body.findings as { id: string }[]).map(({ id }) => ({ finding: id, words: 'Stands.' }));
  const { body: after } = await b.reviewer
    .call('post', `/v1/submissions/${reference}/reviews`)
    .set('If-Match', `"${body.version}"`)
    .send({ ...('query' in decision ? {} : { resolutions }), ...decision })
    .expect(201);
  return after.version as number;
}
const RETURN = { decision: 'returned', query: { specimens: [1], question: 'What does the film show?' } };

test('a tester finds what is asked, what came back, what was begun, and the spools not pulled yet', async () => {
  expect(await refs(b.tester, 'spools_to_pull')).toEqual([b.spool, b.otherSpool].sort());
  const reference = await handIn();
  expect(await refs(b.tester, 'spools_to_pull')).toEqual([b.otherSpool]);
  await decide(reference, RETURN);
  expect(await refs(b.tester, 'queries_open')).toEqual([reference]);
  expect(await refs(b.tester, 'returned_to_you')).toEqual([]);
  const { items } = (await b.tester.call('get', '/v1/queries').expect(200)).body as { items: { id: string }[] };
  await b.tester.call('post', `/v1/queries/${items[0]!.id}/answer`).send({ answer: 'As written.' }).expect(201);
  expect(await refs(b.tester, 'queries_open')).toEqual([]);
  expect(await refs(b.tester, 'returned_to_you')).toEqual([reference]);
  const { body: draft } = await b.tester
    .call('post', '/v1/drafts')
    .send({ content: contentFor(b.spool) })
    .expect(201);
  expect(await refs(b.tester, 'drafts')).toEqual([draft.reference]);
});

test('the inbox of a tester does not tell what others handed in, nor what a spool is', async () => {
  const before = await b.otherTester.call('get', '/v1/inbox').expect(200);
  await handIn();
  const after = await b.otherTester.call('get', '/v1/inbox').expect(200);
  expect(after.text).toBe(before.text);
  expect(after.text).not.toMatch(/tern|north-bay/i);
});

test('a reviewer finds the queue, doubts and what is with its tester, but no own work and nothing of a maker with a tie', async () => {
  const both = await b.t.caller(['tester', 'reviewer'], 'B. Oth');
  const own = await handIn(both);
  const waiting = await handIn();
  const accepted = await handIn();
  await decide(accepted, { decision: 'accepted' });
  await b.sql(
    `INSERT INTO finding (id, revision_id, code, severity, detail) SELECT gen_random_uuid(), r.id, 'rig/out-of-control', 'held', f.detail
     FROM submission s JOIN submission_revision r ON r.submission_id = s.id JOIN finding f ON f.revision_id = r.id WHERE s.reference = $1 LIMIT 1`,
    [accepted],
  );
  expect(await refs(b.reviewer, 'reviews_waiting')).toEqual(expect.arrayContaining([own, waiting]));
  expect(await refs(b.reviewer, 'doubts_open')).toEqual([accepted]);
  expect(await refs(b.reviewer, 'returned_to_testers')).toHaveLength(1);
  const mine = await inboxOf(both);
  expect(mine['reviews_waiting']).toMatchObject({ role: 'reviewer', references: expect.arrayContaining([waiting]) });
  expect(mine['reviews_waiting']!.references).not.toContain(own);
  expect(mine['spools_to_pull']).toMatchObject({ role: 'tester' });
  const tied = await b.t.caller(['reviewer']);
  expect(await refs(tied, 'reviews_waiting')).not.toEqual([]);
  await tied.call('post', '/v1/interests').send({ maker: MAKER.slug, words: 'Shares.' }).expect(201);
  expect(await inboxOf(tied)).toEqual({});
});

test('an editor finds proposals of others, steps that are due and certificates that end', async () => {
  const accepted = await handIn();
  await decide(accepted, { decision: 'accepted' });
  const ofOther = await proposeWithdrawal(b.reviewer, accepted);
  await proposeWithdrawal(b.editor, accepted);
  expect(await refs(b.editor, 'proposals_open')).toEqual([ofOther]);
  const other = await b.t.caller(['editor']);
  expect(await refs(other, 'proposals_open')).toHaveLength(2);
  await b.editor.call('post', '/v1/schemes').send(FORCE_SCHEME).expect(201);
  const plan = (slug: string, opensOn: string) =>
    b.editor
      .call('post', '/v1/editions')
      .send({
        slug,
        name: slug,
        scheme: { slug: FORCE_SCHEME.slug, number: 1 },
        opensOn,
        closesOn: '2026-12-31',
        previous: null,
        methods: [{ slug: 'straight-pull', number: 1 }],
      })
      .expect(201);
  await plan('due', '2026-03-15');
  await plan('not-due', '2026-03-16');
  expect(await refs(b.editor, 'openings_due')).toEqual(['due']);
  expect(await refs(b.editor, 'closings_due')).toEqual([]);
  expect(await refs(b.editor, 'certificates_ending')).toEqual([]);
  await insertEdition(b.t.databaseUrl, 'over', 'open', { closesOn: '2026-03-14' });
  await insertEdition(b.t.databaseUrl, 'last-day', 'open', { closesOn: '2026-03-15' });
  await insertEdition(b.t.databaseUrl, 'shut', 'closed', { closesOn: '2026-03-14' });
  await b.sql(`UPDATE calibration SET valid_until = '2026-04-13' WHERE certificate = 'C-M1'`);
  const inbox = await inboxOf(b.editor);
  expect(inbox['closings_due']!.references).toEqual(['over']);
  expect(inbox['releases_due']!.references).toEqual(['shut']);
  expect(inbox['certificates_ending']!.references).toEqual(['M1']);
});

test('an editor finds published editions of which something changed since', async () => {
  const accepted = await handIn();
  await decide(accepted, { decision: 'accepted' });
  const publish = (slug: string) =>
    b.sql(
      `INSERT INTO release (id, edition_id, revision, state, requested_by_id, requested_at, published_at, digest, manifest, signature) SELECT gen_random_uuid(), id, 1, 'published', gen_random_uuid(), now(), '2026-03-01', 'x', '{"files":[]}', '{"publicKey":""}' FROM edition WHERE slug = $1`,
      [slug],
    );
  for (const slug of ['2026', 'over', 'last-day']) await publish(slug);
  expect((await inboxOf(b.editor))['corrections_due']).toBeUndefined();
  const supersede = `INSERT INTO superseded_row (id, kind, object_id, was, reason, rested, by_id, at) VALUES (gen_random_uuid(), 'claim', gen_random_uuid(), '{}', 'x', $1, gen_random_uuid(), $2)`;
  const rested = JSON.stringify({ submissions: ['S-over-0001'], editions: ['over'] });
  await b.sql(supersede, [rested, '2026-02-28']);
  expect((await inboxOf(b.editor))['corrections_due']).toBeUndefined();
  await b.sql(supersede, [rested, '2026-03-02']);
  expect(await refs(b.editor, 'corrections_due')).toEqual(['over']);
  const proposal = await proposeWithdrawal(b.reviewer, accepted);
  const { body } = await b.editor.call('get', `/v1/submissions/${accepted}`).expect(200);
  await b.editor.call('post', `/v1/submissions/${accepted}/withdrawal`).set('If-Match', `"${body.version}"`).send({ proposal }).expect(201);
  expect(await refs(b.editor, 'corrections_due')).toEqual(['2026', 'over']);
});

test('an editor finds an edition whose spool was found to be another variant since', async () => {
  const [spool] = (await b.sql(`SELECT id, variant_id FROM spool WHERE blind_code = $1`, [b.spool])) as [
    { id: string; variant_id: string },
  ];
  await b.sql(
    `INSERT INTO submission (id, reference, edition_id, tester_id, spool_id, method_version_id, bench_day, state, revision, created_at)
     SELECT gen_random_uuid(), 'S-last-day-0001', e.id, s.tester_id, s.spool_id, s.method_version_id, s.bench_day, 'accepted', 1, now()
     FROM edition e, submission s WHERE e.slug = 'last-day' AND s.state = 'accepted' LIMIT 1`,
  );
  expect(await refs(b.editor, 'corrections_due')).not.toContain('last-day');
  const id = await proposeReidentification(b.reviewer, b.spool, OTHER_VARIANT.slug, 'The label reads so.');
  await b.sql(
    `INSERT INTO spool_reidentification (id, spool_id, from_variant_id, to_variant_id, reason, by_id, proposal_id, at)
     SELECT gen_random_uuid(), $1, $2, v.id, 'x', $3, $4, '2026-03-15' FROM variant v WHERE v.slug = $5`,
    [spool.id, spool.variant_id, b.editor.accountId, id, OTHER_VARIANT.slug],
  );
  expect(await refs(b.editor, 'corrections_due')).toContain('last-day');
});

test('an admin finds invitations that nobody has taken up; nobody signed out has an inbox', async () => {
  const admin = await b.t.caller(['admin']);
  expect(await inboxOf(admin)).toEqual({});
  await admin
    .call('post', '/v1/invitations')
    .send({ roles: ['tester'], note: 'For the new bench hand.' })
    .expect(201);
  expect(await refs(admin, 'invitations_open')).toEqual(['For the new bench hand.']);
  await b.t.call('get', '/v1/inbox').expect(401);
});
