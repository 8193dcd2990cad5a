/** Every cell of role × state × action, those that are refused too, from the one table that is also the documentation. */
import { isAllowed, SUBMISSION_ACTIONS } from '../../api/contract/submission-actions.js';
import type { ActionName } from '../../api/contract/submission-actions.js';
import { SUBMISSION_STATES } from '../../api/contract/submission-states.js';
import type { SubmissionState } from '../../api/contract/submission-states.js';
import type { Role } from '../../api/contract/roles.js';
import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import { proposeWithdrawal } from '../support/propose.js';
import type { Caller } from '../support/test-application.js';

/** Who asks: with which roles, and whether the submission is their own. */
const PEOPLE = [
  { who: 'its tester', roles: ['tester'], isOwn: true },
  { who: 'another tester', roles: ['tester'], isOwn: false },
  { who: 'a reviewer', roles: ['reviewer'], isOwn: false },
  { who: 'an editor', roles: ['editor'], isOwn: false },
  { who: 'an admin', roles: ['admin'], isOwn: false },
  { who: 'its tester, who reviews and edits too', roles: ['tester', 'reviewer', 'editor'], isOwn: true },
] as const satisfies readonly { who: string; roles: readonly Role[]; isOwn: boolean }[];
type Person = (typeof PEOPLE)[number];

let b: Bench;
const callers = new Map<Person, Caller>();
let force = 30;

beforeAll(async () => {
  b = await setUpBench();
  for (const person of PEOPLE) callers.set(person, await b.t.caller(person.roles));
});
afterAll(() => b.t.close());

interface Made {
  readonly reference: string;
  readonly version: number;
  readonly finding: string;
  readonly force: number;
}

const body = (made: { force: number }, change: object = {}) => contentFor(b.spool, { specimens: pulls(made.force), ...change });

/** A submission of a tester in a state, by the very calls that lead there. */
async function made(state: SubmissionState, tester: Caller): Promise<Made> {
  force += 0.37;
  const own = { force };
  const post = (by: Caller, path: string, version: number, sent: object) =>
    by.call('post', `/v1/submissions/${path}`).set('If-Match', `"${version}"`).send(sent).expect(201);
  if (state === 'draft') {
    const { body: draft } = await tester
      .call('post', '/v1/drafts')
      .send({ content: body(own) })
      .expect(201);
    return { reference: draft.reference, version: draft.version, finding: NONE, ...own };
  }
  const { reference } = (await tester.call('post', '/v1/submissions').send(body(own)).expect(201)).body as { reference: string };
  const seen = (await b.reviewer.call('get', `/v1/submissions/${reference}`).expect(200)).body as {
    version: number;
    findings: { id: string; severity: string }[];
  };
  const held = seen.findings.filter(({ severity }) => severity === 'held').map(({ id }) => id);
  const accept = { decision: 'accepted', resolutions: held.map((finding) => ({ finding, words: 'Stands.' })) };
  const question = { decision: 'returned', query: { specimens: [1], question: 'What does the film show?' } };
  if (state === 'takenBack') {
    const { version } = (await post(tester, `${reference}/taking-back`, seen.version, {})).body as { version: number };
    return { reference, version, finding: held[0] ?? NONE, ...own };
  }
  if (state === 'submitted') return { reference, version: seen.version, finding: held[0] ?? NONE, ...own };
  const decisions = { accepted: accept, withdrawn: accept, returned: question, refused: { decision: 'refused', reason: 'Twice.' } };
  let { version } = (await post(b.reviewer, `${reference}/reviews`, seen.version, decisions[state])).body as { version: number };
  if (state === 'returned') {
    const { items } = (await tester.call('get', '/v1/queries').expect(200)).body as { items: { id: string; submission: string }[] };
    const { id } = items.find(({ submission }) => submission === reference)!;
    await tester.call('post', `/v1/queries/${id}/answer`).send({ answer: 'As written.' }).expect(201);
  }
  if (state === 'withdrawn')
    version = (await post(b.editor, `${reference}/withdrawal`, version, { proposal: await proposeWithdrawal(b.reviewer, reference) })).body
      .version;
  let finding: string = NONE;
  if (state === 'accepted') {
    // Came up after the acceptance, as a control pull would make it.
    const [row] = await b.sql(
      `INSERT INTO finding (id, revision_id, code, severity, detail) SELECT gen_random_uuid(), r.id, 'rig/out-of-control', 'held', f.detail
       FROM submission s JOIN submission_revision r ON r.submission_id = s.id JOIN finding f ON f.revision_id = r.id WHERE s.reference = $1 LIMIT 1 RETURNING id`,
      [reference],
    );
    finding = String(row!['id']);
  }
  return { reference, version, finding, ...own };
}
const NONE = '00000000-0000-7000-8000-000000000000';

/** A proposal to withdraw it; what is not accepted can have none. */
async function proposalOn(submission: string): Promise<string> {
  const { status, body: answer } = await b.reviewer.call('post', '/v1/proposals').send({ kind: 'withdrawal', submission, reason: 'Bent.' });
  return status === 201 ? (answer.id as string) : NONE;
}

/** What is sent with an action where it needs anything. */
async function sent(action: ActionName, one: Made): Promise<object | string | undefined> {
  const acceptance = async () => {
    const { findings } = (await b.reviewer.call('get', `/v1/submissions/${one.reference}`)).body as {
      findings?: { id: string; severity: string }[];
    };
    return (findings ?? []).filter(({ severity }) => severity === 'held').map(({ id }) => ({ finding: id, words: 'Stands.' }));
  };
  const bodies: Partial<Record<ActionName, () => object | string | Promise<object>>> = {
    save: () => ({ content: body(one, { note: 'Typed on.' }) }),
    handIn: () => body({ force: one.force + 200 }),
    addTraces: () => 'Extension (mm),Force (N)\n0,0\n1,10\n2,20\n3,30\n4,40\n',
    judge: () => ({ verdict: 'plausible', words: 'Nothing strange.' }),
    decide: async () => ({ decision: 'accepted', resolutions: await acceptance() }),
    close: () => ({ reason: 'Its tester has left.' }),
    withdraw: async () => ({ proposal: await proposalOn(one.reference) }),
    resolve: () => ({ words: 'The other rig agrees.' }),
  };
  return bodies[action]?.();
}

async function ask(action: ActionName, person: Person, one: Made) {
  const { method, path } = SUBMISSION_ACTIONS[action];
  const address = `/v1/${path.replace(':reference', one.reference).replace(':id', one.finding)}${action === 'addTraces' ? '?specimen=1' : ''}`;
  const call = callers
    .get(person)!
    .call(method.toLowerCase() as 'get', address)
    .set('If-Match', `"${one.version}"`);
  const what = await sent(action, one);
  return typeof what === 'string' ? call.set('Content-Type', 'text/csv').send(what) : what === undefined ? call : call.send(what);
}

/** Actions on the same address by the same method are one door: reading is for its tester and for reviewers and editors. */
const isAllowedAt = (action: ActionName, { roles, isOwn }: Person, state: SubmissionState): boolean =>
  (Object.keys(SUBMISSION_ACTIONS) as ActionName[])
    .filter(
      (other) =>
        SUBMISSION_ACTIONS[other].path === SUBMISSION_ACTIONS[action].path &&
        SUBMISSION_ACTIONS[other].method === SUBMISSION_ACTIONS[action].method,
    )
    .some((other) => isAllowed(other, roles, isOwn, state));

test.each(SUBMISSION_STATES)(
  '%s',
  async (state) => {
    const found: Record<string, string> = {};
    const expected: Record<string, string> = {};
    for (const person of PEOPLE) {
      const tester = person.isOwn ? callers.get(person)! : b.tester;
      let one = await made(state, tester);
      for (const action of Object.keys(SUBMISSION_ACTIONS) as ActionName[]) {
        const cell = `${action} of a ${state} by ${person.who}`;
        const { status, body: answer } = await ask(action, person, one);
        const isDone = status < 300;
        expected[cell] = isAllowedAt(action, person, state) ? 'done' : 'refused';
        found[cell] = isDone ? 'done' : [403, 404, 409].includes(status) ? 'refused' : `${status} ${JSON.stringify(answer).slice(0, 300)}`;
        if (!isDone) expect(answer.code).toMatch(/^(access|reviews|submissions|request)\//);
        if (isDone && SUBMISSION_ACTIONS[action].method !== 'GET') one = await made(state, tester);
      }
    }
    expect(found).toEqual(expected);
    expect(Object.keys(found)).toHaveLength(PEOPLE.length * Object.keys(SUBMISSION_ACTIONS).length);
  },
  120_000,
);

test('the table is what the API answers as documentation', async () => {
  const { items } = (await b.t.call('get', '/v1/submission-actions').expect(200)).body as { items: { action: ActionName }[] };
  expect(Object.fromEntries(items.map(({ action, ...row }) => [action, row]))).toEqual(SUBMISSION_ACTIONS);
});
