/** Every cell of role × state × act on control pulls and on releases that wait, and which submissions a pull casts doubt on; those that are refused too. */
import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import { insertEdition } from '../support/insert-edition.js';
import type { Caller } from '../support/test-application.js';

const ROLES = ['tester', 'reviewer', 'editor', 'admin', 'who pulled it and reviews too'] as const;

let b: Bench;
let people: Record<(typeof ROLES)[number], Caller>;
let days = 0;
beforeAll(async () => {
  b = await setUpBench();
  people = {
    tester: b.otherTester,
    reviewer: b.reviewer,
    editor: b.editor,
    admin: await b.t.caller(['admin']),
    'who pulled it and reviews too': await b.t.caller(['tester', 'reviewer']),
  };
  const line = { code: 'C1', name: 'Reference braid', lot: 'K-7', words: 'Kept dark.' };
  await b.editor.call('post', '/v1/control-lines').send(line).expect(201);
});
afterAll(() => b.t.close());

const day = (n: number) => new Date(Date.UTC(2026, 0, n)).toISOString().slice(0, 10);
const handIn = (forceN: number, by: Caller = people['who pulled it and reviews too']) =>
  by.call('post', '/v1/control-pulls').send({
    controlLine: 'C1',
    instrument: 'R1',
    method: 'straight-pull',
    benchDay: day(days),
    readings: [{ text: forceN.toFixed(2), unit: 'N' }],
  });
const outcomeOf = ({ status, body }: { status: number; body: { code?: string } }) => (status < 300 ? 'done' : body.code);

test('a pull is struck once, by a reviewer who did not pull it', async () => {
  days = 1;
  const found: Record<string, unknown> = {};
  const expected: Record<string, unknown> = {};
  const strike = (id: string, by: Caller) => by.call('post', `/v1/control-pulls/${id}/strike`).send({ reason: 'The grip was open.' });
  for (const state of ['standing', 'struck'] as const)
    for (const who of ROLES) {
      const { id } = (await handIn(84 + 0.01 * Object.keys(found).length).expect(201)).body as { id: string };
      if (state === 'struck') await strike(id, b.reviewer).expect(201);
      const cell = `strike a ${state} one by the ${who}`;
      found[cell] = outcomeOf(await strike(id, people[who]));
      const isReviewer = who === 'reviewer' || who === 'who pulled it and reviews too';
      if (!isReviewer) expected[cell] = 'access/forbidden';
      else if (who !== 'reviewer') expected[cell] = 'control-pulls/own-pull';
      else expected[cell] = state === 'standing' ? 'done' : 'control-pulls/struck';
      if (state === 'standing' && who !== 'reviewer') await strike(id, b.reviewer).expect(201);
    }
  expect(found).toEqual(expected);
});

test('a release is called off by an editor, while it waits', async () => {
  const found: Record<string, unknown> = {};
  const expected: Record<string, unknown> = {};
  for (const state of ['building', 'published', 'called off'] as const)
    for (const who of ROLES) {
      const slug = `off-${Object.keys(found).length}`;
      await insertEdition(b.t.databaseUrl, slug, 'closed');
      if (state !== 'called off')
        await b.sql(
          `INSERT INTO release (id, edition_id, revision, state, requested_by_id, requested_at)
           SELECT gen_random_uuid(), id, 1, 'building', $1, now() FROM edition WHERE slug = $2`,
          [b.editor.accountId, slug],
        );
      if (state === 'published')
        await b.sql(
          `UPDATE release SET state = 'published', published_at = now(), digest = $1, manifest = '{"files":[]}', signature = '{"publicKey":""}'
           WHERE edition_id = (SELECT id FROM edition WHERE slug = $1)`,
          [slug],
        );
      const cell = `call off a ${state} one by the ${who}`;
      found[cell] = outcomeOf(await people[who].call('delete', `/v1/editions/${slug}/releases/1`));
      const ofEditor = { building: 'done', published: 'releases/not-waiting', 'called off': 'request/not-found' };
      expected[cell] = who === 'editor' ? ofEditor[state] : 'access/forbidden';
    }
  expect(found).toEqual(expected);
});

describe('doubt', () => {
  const submission = async (force: number): Promise<string> => {
    const content = contentFor(b.spool, { specimens: pulls(force), benchDay: day(days) });
    return ((await b.tester.call('post', '/v1/submissions').send(content).expect(201)).body as { reference: string }).reference;
  };
  const doubtOf = async (reference: string) =>
    (
      await b.sql(
        `SELECT 1 FROM finding f JOIN submission_revision r ON r.id = f.revision_id JOIN submission s ON s.id = r.submission_id
       WHERE s.reference = $1 AND f.code = 'rig/out-of-control'`,
        [reference],
      )
    ).length > 0;

  test('is cast by a pull that signals, whoever hands it in, on what was pulled since; nobody casts it by hand', async () => {
    for (days = 2; days <= 12; days++) await handIn(84 + (days % 2)).expect(201);
    days = 13;
    const states = ['submitted', 'accepted', 'returned', 'refused', 'takenBack'] as const;
    const references = new Map<string, string>();
    for (const [i, state] of states.entries()) {
      const reference = await submission(90 + 2 * i);
      references.set(state, reference);
      const { version, findings } = (await b.reviewer.call('get', `/v1/submissions/${reference}`).expect(200)).body as {
        version: number;
        findings: { id: string; severity: string }[];
      };
      const resolutions = findings.filter(({ severity }) => severity === 'held').map(({ id }) => ({ finding: id, words: 'Stands.' }));
      const bodies: Readonly<Record<string, object>> = {
        accepted: { decision: 'accepted', resolutions },
        returned: { decision: 'returned', query: { specimens: [1], question: 'What does the film show?' } },
        refused: { decision: 'refused', reason: 'Twice.' },
      };
      const act = (by: Caller, path: string, body: object) =>
        by.call('post', `/v1/submissions/${reference}/${path}`).set('If-Match', `"${version}"`).send(body).expect(201);
      if (bodies[state]) await act(b.reviewer, 'reviews', bodies[state]);
      if (state === 'takenBack') await act(b.tester, 'taking-back', {});
    }
    for (const who of ['reviewer', 'editor', 'admin'] as const) expect(outcomeOf(await handIn(60, people[who]))).toBe('access/forbidden');
    for (const reference of references.values()) expect(await doubtOf(reference)).toBe(false);
    await handIn(60, b.otherTester).expect(201);
    const found = Object.fromEntries(await Promise.all([...references].map(async ([state, one]) => [state, await doubtOf(one)] as const)));
    expect(found).toEqual({ submitted: true, accepted: true, returned: true, refused: false, takenBack: false });
  });
});
