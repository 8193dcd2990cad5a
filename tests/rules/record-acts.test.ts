/** Every cell of role × state × act on what stands on record: retired, corrected, superseded, struck, asked for; those that are refused too. */
import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import { LINE, MAKER, SPOOL, VARIANT } from '../support/catalogue-fixtures.js';
import type { Caller } from '../support/test-application.js';

const ROLES = ['tester', 'reviewer', 'editor', 'admin'] as const;
type Role = (typeof ROLES)[number];

let b: Bench;
let people: Record<Role, Caller>;
beforeAll(async () => {
  b = await setUpBench();
  people = { tester: b.tester, reviewer: b.reviewer, editor: b.editor, admin: await b.t.caller(['admin']) };
});
afterAll(() => b.t.close());

const versionOf = async (path: string) => ((await b.editor.call('get', path).expect(200)).body as { version: number }).version;
const asked = async (who: Caller, verb: 'post' | 'delete' | 'patch' | 'put', path: string, version: number, body?: object) => {
  const call = who.call(verb, path).set('If-Match', `"${version}"`);
  const { status, body: answer } = await (body === undefined ? call : call.send(body));
  return status < 300 ? 'done' : (answer as { code: string }).code;
};

const PATHS: Readonly<Record<string, () => string>> = {
  maker: () => `/v1/catalogue/makers/${MAKER.slug}`,
  line: () => `/v1/catalogue/lines/${LINE.slug}`,
  variant: () => `/v1/catalogue/variants/${VARIANT.slug}`,
  spool: () => `/v1/catalogue/spools/${b.strangeSpool}`,
  instrument: () => '/v1/instruments/R1',
};

describe.each(Object.keys(PATHS))('a %s', (kind) => {
  test('is retired and taken into use again by editors alone, and whoever read an old version changes nothing', async () => {
    const path = PATHS[kind]!();
    const found: Record<string, string> = {};
    const expected: Record<string, string> = {};
    for (const state of ['in use', 'retired'] as const)
      for (const who of ROLES)
        for (const act of ['retire', 'take into use'] as const) {
          if (state === 'retired')
            expect(await asked(b.editor, 'post', `${path}/retirement`, await versionOf(path), { reason: 'Worn.' })).toBe('done');
          const verb = act === 'retire' ? 'post' : 'delete';
          const cell = `${act} by the ${who}, ${state}`;
          const version = await versionOf(path);
          const body = act === 'retire' ? { reason: 'Worn out.' } : undefined;
          found[cell] = await asked(people[who], verb, `${path}/retirement`, version, body);
          expected[cell] = who === 'editor' ? 'done' : 'access/forbidden';
          if (who === 'editor') expect(await asked(b.editor, verb, `${path}/retirement`, version, body)).toBe('request/if-match-stale');
          await b.editor
            .call('delete', `${path}/retirement`)
            .set('If-Match', `"${await versionOf(path)}"`)
            .expect(204);
        }
    expect(found).toEqual(expected);
    await b.editor
      .call('post', `${path}/retirement`)
      .set('If-Match', `"${await versionOf(path)}"`)
      .send({ reason: '' })
      .expect(422);
  });
});

describe('what is retired takes nothing new, and what was done with it before stands', () => {
  const content = (benchDay: string, force: number) => ({ ...contentFor(b.otherSpool, { specimens: pulls(force) }), benchDay });
  const retire = async (path: string): Promise<unknown> =>
    b.editor
      .call('post', `${path}/retirement`)
      .set('If-Match', `"${await versionOf(path)}"`)
      .send({ reason: 'Used up.' })
      .expect(201);
  const inUse = async (path: string): Promise<unknown> =>
    b.editor
      .call('delete', `${path}/retirement`)
      .set('If-Match', `"${await versionOf(path)}"`)
      .expect(204);
  let today: string;
  let yesterday: string;
  beforeAll(() => {
    today = b.t.clock.time.toISOString().slice(0, 10);
    yesterday = new Date(b.t.clock.time.getTime() - 86_400_000).toISOString().slice(0, 10);
  });

  test.each([
    ['spool', '/spool', (): string => `/v1/catalogue/spools/${b.otherSpool}`],
    ['instrument', '/instruments/0', (): string => '/v1/instruments/R1'],
  ] as const)('%s: a later bench day is refused in words, an earlier one taken', async (kind, pointer, pathOf) => {
    const path = pathOf();
    const before = b.t.clock.time;
    await retire(path);
    b.t.clock.time = new Date(before.getTime() + 86_400_000);
    const tomorrow = b.t.clock.time.toISOString().slice(0, 10);
    const refused = await b.tester.call('post', '/v1/submissions').send(content(tomorrow, 71)).expect(422);
    expect(refused.body.errors).toEqual([
      { pointer, code: 'retired', detail: expect.stringContaining(`out of use since ${today}; found a bench day of ${tomorrow}`) },
    ]);
    await b.tester
      .call('post', '/v1/submissions')
      .send(content(yesterday, kind === 'spool' ? 72 : 73))
      .expect(201);
    await inUse(path);
    await b.tester
      .call('post', '/v1/submissions')
      .send(content(tomorrow, kind === 'spool' ? 74 : 75))
      .expect(201);
    b.t.clock.time = before;
  });

  test('no control pull is made on a retired rig: the answer says since when, and what to do', async () => {
    const before = b.t.clock.time;
    await b.editor.call('post', '/v1/control-lines').send({ code: 'C9', name: 'Reference', lot: 'L', words: 'Kept dark.' }).expect(201);
    await retire('/v1/instruments/R1');
    b.t.clock.time = new Date(before.getTime() + 86_400_000);
    const benchDay = b.t.clock.time.toISOString().slice(0, 10);
    const readings = ['83.1', '82.6', '83.4'].map((text) => ({ text, unit: 'N' }));
    const pull = { controlLine: 'C9', instrument: 'R1', method: 'straight-pull', benchDay, readings };
    const refused = await b.tester.call('post', '/v1/control-pulls').send(pull).expect(422);
    expect(refused.body.errors).toEqual([
      {
        pointer: '/instrument',
        code: 'retired',
        detail: expect.stringContaining(`out of use since ${today}; found a bench day of ${benchDay}`),
      },
    ]);
    await inUse('/v1/instruments/R1');
    await b.tester.call('post', '/v1/control-pulls').send(pull).expect(201);
    b.t.clock.time = before;
  });

  test('nobody is asked for a retired spool, no round robin has it, no certificate is added to a retired instrument', async () => {
    const [spool, rig] = [`/v1/catalogue/spools/${b.strangeSpool}`, '/v1/instruments/R1'];
    await retire(spool);
    await retire(rig);
    const ask = { tester: b.tester.accountId, method: 'straight-pull', spools: [b.strangeSpool], specimens: 5, dueOn: null };
    const assigned = await b.editor.call('post', '/v1/editions/2026/assignments').send(ask).expect(422);
    expect(assigned.body.errors[0].detail).toContain('No spool in use carries');
    const robin = {
      slug: 'ring',
      name: 'Ring',
      words: 'A ring.',
      method: 'straight-pull',
      spools: [b.strangeSpool, b.spool, b.otherSpool],
    };
    const testers = [b.tester.accountId, b.otherTester.accountId];
    const planned = await b.editor
      .call('post', '/v1/round-robins')
      .send({ ...robin, testers, specimens: 5 })
      .expect(422);
    expect(planned.text).toContain('No spool in use carries');
    const certificate = {
      certificate: 'C-9',
      validFrom: today,
      validUntil: today,
      correctionPercent: '0',
      expandedUncertaintyPercent: '1',
    };
    const added = await b.editor
      .call('post', `${rig}/calibrations`)
      .send({ ...certificate, coverageFactor: '2' })
      .expect(422);
    expect(added.body.errors[0].code).toBe('retired');
    await inUse(spool);
    await inUse(rig);
  });

  test('the record keeps no retirement without a reason', async () => {
    for (const table of ['spool', 'instrument']) await expect(b.sql(`UPDATE ${table} SET retired_on = now()`)).rejects.toThrow(/says_why/);
  });
});

describe('an assignment', () => {
  test.each(['standing', 'taken back'] as const)('%s', async (state) => {
    const found: Record<string, string> = {};
    const expected: Record<string, string> = {};
    for (const who of ROLES) {
      const ask = { tester: b.tester.accountId, method: 'straight-pull', spools: [b.spool], specimens: 5, dueOn: null };
      expected[`ask by the ${who}`] = who === 'editor' ? 'done' : 'access/forbidden';
      found[`ask by the ${who}`] = await asked(people[who], 'post', '/v1/editions/2026/assignments', 0, ask);
      if (who !== 'editor') await b.editor.call('post', '/v1/editions/2026/assignments').send(ask).expect(201);
      const { items } = (await b.tester.call('get', '/v1/assignments').expect(200)).body as { items: { id: string }[] };
      const { id } = items[0]!;
      if (state === 'taken back') await b.editor.call('delete', `/v1/assignments/${id}`).expect(204);
      expected[`take back by the ${who}`] = who === 'editor' ? (state === 'standing' ? 'done' : 'request/not-found') : 'access/forbidden';
      found[`take back by the ${who}`] = await asked(people[who], 'delete', `/v1/assignments/${id}`, 0);
      await b.editor.call('delete', `/v1/assignments/${id}`);
    }
    expect(found).toEqual(expected);
  });
});

test("a correction is the editor's; once something rests on it, it needs a reason", async () => {
  const found: Record<string, string> = {};
  const expected: Record<string, string> = {};
  const fresh = (
    await b.editor
      .call('post', '/v1/catalogue/spools')
      .send({ ...SPOOL, lot: 'L-1' })
      .expect(201)
  ).body as { blindCode: string };
  await b.tester
    .call('post', '/v1/submissions')
    .send(contentFor(b.spool, { specimens: pulls(81) }))
    .expect(201);
  for (const [state, code] of [
    ['nothing rests on it', fresh.blindCode],
    ['a submission rests on it', b.spool],
  ] as const)
    for (const who of ROLES)
      for (const [act, reason] of [
        ['correct', {}],
        ['supersede', { reason: 'Read again on the box.' }],
      ] as const) {
        const path = `/v1/catalogue/spools/${code}`;
        const cell = `${act} by the ${who}, ${state}`;
        found[cell] = await asked(people[who], 'patch', path, await versionOf(path), { lot: `L-${cell.length}${act}${who}`, ...reason });
        const isTaken = state === 'nothing rests on it' || act === 'supersede';
        expected[cell] = who !== 'editor' ? 'access/forbidden' : isTaken ? 'done' : 'request/not-valid';
      }
  expect(found).toEqual(expected);
});
