/** Every cell of role × state × act on editions and on proposals, those that are refused too. */
import { randomUUID } from 'node:crypto';
import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import { OTHER_VARIANT, VARIANT } from '../support/catalogue-fixtures.js';
import { FORCE_SCHEME } from '../support/season.js';
import type { Caller } from '../support/test-application.js';

const STATES = ['planned', 'open', 'closed', 'published'] as const;
type State = (typeof STATES)[number];

let b: Bench;
let people: Record<string, Caller>;
let made = 0;
beforeAll(async () => {
  b = await setUpBench();
  await b.editor.call('post', '/v1/schemes').send(FORCE_SCHEME).expect(201);
  people = { tester: b.tester, reviewer: b.reviewer, editor: b.editor, admin: await b.t.caller(['admin']) };
});
afterAll(() => b.t.close());

/** An edition with one entry, brought to a state by the steps that lead there; published, straight in the record. */
async function edition(state: State): Promise<{ slug: string; version: number }> {
  const slug = `e-${++made}`;
  const days = { opensOn: '2026-01-01', closesOn: '2026-06-30' };
  const methods = [{ slug: 'straight-pull', number: 1 }];
  const post = (path: string, version: number, body: object = {}) =>
    b.editor.call('post', `/v1/editions${path}`).set('If-Match', `"${version}"`).send(body).expect(201);
  await post('', 0, { slug, name: slug, scheme: { slug: FORCE_SCHEME.slug, number: 1 }, previous: null, methods, ...days });
  await post(`/${slug}/entries`, 0, { variants: [VARIANT.slug] });
  if (state !== 'planned') await post(`/${slug}/opening`, 2);
  if (state === 'closed' || state === 'published') await post(`/${slug}/closure`, 3);
  if (state === 'published') await b.sql(`UPDATE edition SET state = 'published' WHERE slug = $1`, [slug]);
  return { slug, version: { planned: 2, open: 3, closed: 4, published: 4 }[state] };
}

interface Act {
  readonly verb: 'post' | 'patch' | 'delete';
  readonly path: string;
  readonly body?: object;
  readonly states: readonly State[];
}
const ACTS: Readonly<Record<string, Act>> = {
  change: { verb: 'patch', path: '', body: { name: 'Another' }, states: ['planned'] },
  takeAway: { verb: 'delete', path: '', states: ['planned'] },
  enter: { verb: 'post', path: '/entries', body: { variants: [OTHER_VARIANT.slug] }, states: ['planned'] },
  removeEntry: { verb: 'delete', path: `/entries/${VARIANT.slug}`, states: ['planned'] },
  open: { verb: 'post', path: '/opening', states: ['planned'] },
  amend: { verb: 'post', path: '/amendments', body: { reason: 'Late.', closesOn: '2026-07-31' }, states: ['open'] },
  close: { verb: 'post', path: '/closure', states: ['open'] },
  exclude: {
    verb: 'post',
    path: '/exclusions',
    body: { variant: VARIANT.slug, reasonCode: 'notObtainable', words: 'Not sold.', effect: 'closedUp' },
    states: ['planned', 'open', 'closed'],
  },
};

test.each(STATES)(
  'a %s edition',
  async (state) => {
    const found: Record<string, string> = {};
    const expected: Record<string, string> = {};
    for (const [name, { verb, path, body, states }] of Object.entries(ACTS))
      for (const who of ['tester', 'reviewer', 'admin', 'editor']) {
        const { slug, version } = await edition(state);
        const call = people[who]!.call(verb, `/v1/editions/${slug}${path}`).set('If-Match', `"${version}"`);
        const { status, body: answer } = await (body ? call.send(body) : call);
        const cell = `${name} of a ${state} one by the ${who}`;
        expected[cell] = who === 'editor' ? (states.includes(state) ? 'done' : 'editions/wrong-state') : 'access/forbidden';
        found[cell] = status < 300 ? 'done' : (answer.code as string);
      }
    expect(found).toEqual(expected);
  },
  60_000,
);

describe('proposals', () => {
  const ENDS = ['open', 'carriedOut', 'declined', 'calledOff'] as const;
  const WHO = ['who made it', 'another editor', 'a reviewer', 'the tester'] as const;
  const whoOf: Record<string, Caller> = {};
  let force = 30;
  beforeAll(async () => {
    whoOf['who made it'] = await b.t.caller(['editor']);
    whoOf['another editor'] = b.editor;
    whoOf['a reviewer'] = b.reviewer;
    whoOf['the tester'] = b.tester;
  });

  const act = (by: string, name: string, id: string, { reference, version }: { reference: string; version: number }) =>
    name === 'carryOut'
      ? whoOf[by]!.call('post', `/v1/submissions/${reference}/withdrawal`).set('If-Match', `"${version}"`).send({ proposal: id })
      : whoOf[by]!.call('post', `/v1/proposals/${id}/${name === 'decline' ? 'refusal' : 'cancellation'}`).send({ reason: 'No.' });

  async function proposal(state: (typeof ENDS)[number]) {
    force += 1.5;
    const sent = contentFor(b.spool, { specimens: pulls(force) });
    const { reference } = (await b.tester.call('post', '/v1/submissions').send(sent).expect(201)).body as { reference: string };
    await b.sql(
      `INSERT INTO review (id, revision_id, reviewer_id, decision, at) SELECT $1, r.id, $2, 'accepted', now()
       FROM submission s JOIN submission_revision r ON r.submission_id = s.id WHERE s.reference = $3`,
      [randomUUID(), b.reviewer.accountId, reference],
    );
    await b.sql(`UPDATE submission SET state = 'accepted' WHERE reference = $1`, [reference]);
    const { version } = (await b.editor.call('get', `/v1/submissions/${reference}`).expect(200)).body as { version: number };
    const about = { kind: 'withdrawal', submission: reference, reason: 'Bent.' };
    const { id } = (await whoOf['who made it']!.call('post', '/v1/proposals').send(about).expect(201)).body as { id: string };
    const one = { reference, version };
    if (state === 'carriedOut') await act('another editor', 'carryOut', id, one).expect(201);
    if (state === 'declined') await act('another editor', 'decline', id, one).expect(201);
    if (state === 'calledOff') await act('who made it', 'callOff', id, one).expect(201);
    return { id, reference, version: state === 'carriedOut' ? version + 1 : version };
  }

  const doers: Readonly<Record<string, string>> = { carryOut: 'another editor', decline: 'another editor', callOff: 'who made it' };

  /** A submission that is withdrawn is withdrawn by nobody again; else the person is asked about before the state. */
  function expectedOf(state: (typeof ENDS)[number], name: string, who: string): string {
    const isEditor = who === 'who made it' || who === 'another editor';
    if (name === 'carryOut' && state === 'carriedOut' && isEditor) return '409';
    if (who !== doers[name]) return '403';
    if (state === 'open') return 'done';
    return name === 'carryOut' ? '422' : '409';
  }

  test.each(ENDS)(
    '%s',
    async (state) => {
      const found: Record<string, string> = {};
      const expected: Record<string, string> = {};
      for (const name of Object.keys(doers))
        for (const who of WHO) {
          const one = await proposal(state);
          const { status } = await act(who, name, one.id, one);
          const cell = `${name} by ${who}`;
          expected[cell] = expectedOf(state, name, who);
          found[cell] = status < 300 ? 'done' : String(status);
        }
      expect(found).toEqual(expected);
    },
    60_000,
  );
});
