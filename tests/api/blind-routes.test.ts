/** No answer to a tester carries maker, line or claim of a coded spool: every route that a tester may call is called, and each answer searched. */
import { ROUTES } from '../rules/route-table.js';
import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import { CLAIM, LINE, MAKER, OTHER_VARIANT, VARIANT } from '../support/catalogue-fixtures.js';
import { csvFile, pullRows } from '../support/hand-in-csv.js';
import type { Test } from 'supertest';

let b: Bench;
let own: { reference: string; draft: string; query: string; id: string };
beforeAll(async () => {
  b = await setUpBench();
  own = await workOfATester();
});
afterAll(() => b.t.close());

/** What would tell: names, slugs, sizes, and the claim as printed and in newtons. Makers alone are listed, for interests are declared by them. */
const TELLING = [
  LINE.name,
  LINE.slug,
  VARIANT.slug,
  OTHER_VARIANT.slug,
  VARIANT.size,
  `"${CLAIM.printed.text}"`,
  '88.96',
  MAKER.name,
  MAKER.slug,
];

/** Routes that name makers to everybody, and tie none to a spool. */
const NAMES_MAKERS: Readonly<Record<string, string>> = {
  'GET /v1/catalogue/makers': 'the list that a tester declares interests from',
  'GET /v1/catalogue/makers/:slug': 'the same, one',
  'GET /v1/interests': "the tester's own declarations",
  'POST /v1/interests': 'the same',
};

/** A submission with a query, a finding that compares with the label, a control pull and a draft. */
async function workOfATester() {
  const content = contentFor(b.spool, { specimens: pulls(395) });
  const { reference } = (await b.tester.call('post', '/v1/submissions').send(content).expect(201)).body as { reference: string };
  await b.reviewer
    .call('post', `/v1/submissions/${reference}/reviews`)
    .set('If-Match', '"1"')
    .send({ decision: 'returned', query: { kind: 'unit', specimens: [1], question: 'Please look at the unit.' } })
    .expect(201);
  const queries = (await b.tester.call('get', '/v1/queries').expect(200)).body.items as { id: string }[];
  const draft = (
    await b.tester
      .call('post', '/v1/drafts')
      .send({ content: contentFor(b.otherSpool) })
      .expect(201)
  ).body as { reference: string };
  await b.editor.call('post', '/v1/control-lines').send({ code: 'C1', name: 'Reference', lot: 'L', words: 'Kept dark.' }).expect(201);
  return { reference, draft: draft.reference, query: queries[0]!.id, id: queries[0]!.id };
}

const isForTesters = (who: string): boolean => who === 'anyone' || who === 'signedIn' || who.split(' ').includes('tester');
const pullOf = (force: string) => ({
  controlLine: 'C1',
  instrument: 'R1',
  method: 'straight-pull',
  benchDay: '2026-03-10',
  readings: [{ text: force, unit: 'N' }],
});

/** Addresses and bodies for a route: good ones that are answered well, and such as are refused with words. */
function callsOf(route: string): Test[] {
  const [verb = '', path = ''] = route.split(' ');
  const fill = (reference: string, slug: string) =>
    path
      .replace(':reference', reference)
      .replace(':specimen', '1')
      .replace(':number', '2')
      .replace(':slug', slug)
      .replace(':method', 'straight-pull')
      .replace(':edition', '2026')
      .replace(':revision', '1')
      .replace(':variant', VARIANT.slug)
      .replace(':category', 'stress')
      .replace(':code', 'R1')
      .replace(':id', own.query)
      .replace(':secret', 'none')
      .replace('*', 'bundle.json');
  const call = (address: string) => b.tester.call(verb.toLowerCase() as 'get', address).set('If-Match', '"1"');
  const addresses = [fill(own.reference, 'straight-pull'), fill(own.draft, 'diameter')];
  if (verb === 'GET') return addresses.map(call);
  const bodies: Readonly<Record<string, object[]>> = {
    'POST /v1/submissions': [
      contentFor(b.spool, { specimens: pulls(20) }),
      contentFor(b.strangeSpool),
      { ...contentFor(b.spool), method: 'none' },
    ],
    'POST /v1/submissions/preview': [contentFor(b.spool, { specimens: pulls(400) }), contentFor(b.strangeSpool)],
    'POST /v1/drafts': [{ content: contentFor(b.spool) }, { content: { ...contentFor(b.strangeSpool), spool: 'AAAAAAA' } }],
    'PUT /v1/drafts/:reference': [{ content: contentFor(b.otherSpool, { note: 'on' }) }],
    'POST /v1/control-pulls': [pullOf('84.1'), pullOf('x')],
    'POST /v1/queries/:id/answer': [{ answer: 'As displayed.' }],
    'POST /v1/submissions/:reference/revisions': [contentFor(b.spool, { specimens: pulls(395.5) })],
  };
  return addresses.flatMap((address) => [{}, ...(bodies[route] ?? [])].map((body) => call(address).send(body)));
}

test('a search of every answer that a tester can get, refusals too: no hit', async () => {
  const hits: string[] = [];
  const answered = new Map<string, number[]>();
  const files = [
    csvFile(pullRows({ edition: '2026', spool: b.spool, instrument: 'R1', benchDay: '2026-03-11' }, 'straight-pull', [])),
    'edition,spool\n2026,AAAAAAA\n',
  ];
  const routes = ROUTES.filter(([route, who]) => isForTesters(who) && !route.startsWith('DELETE'));
  for (const [route] of routes) {
    const calls = callsOf(route);
    if (route === 'POST /v1/submissions' || route === 'POST /v1/submissions/preview')
      calls.push(...files.map((file) => b.tester.call('post', route.slice(5)).set('Content-Type', 'text/csv').send(file)));
    for (const call of calls) {
      const answer = await call.buffer(true);
      answered.set(route, [...(answered.get(route) ?? []), answer.status]);
      const text = `${JSON.stringify(answer.headers)} ${answer.text}`;
      // The address that was asked comes back in a refusal; what the caller knew already is no leak.
      const told = text.replaceAll(VARIANT.slug, (found) => (call.url.includes(VARIANT.slug) ? '' : found));
      const leaks = TELLING.filter(
        (telling) => told.includes(telling) && !(route in NAMES_MAKERS && (telling === MAKER.name || telling === MAKER.slug)),
      );
      hits.push(...leaks.map((telling) => `${route} (${answer.status}): ${telling}`));
    }
  }
  expect(hits).toEqual([]);
  expect(answered.size).toBe(routes.length);
  // The walk is worth something only if the routes that speak of spools were answered well.
  for (const route of [
    'GET /v1/submissions/:reference',
    'GET /v1/spools',
    'GET /v1/queries',
    'POST /v1/submissions',
    'POST /v1/submissions/preview',
    'POST /v1/control-pulls',
    'GET /v1/submissions/:reference/actions',
  ])
    expect([route, answered.get(route)!.some((status) => status < 300)]).toEqual([route, true]);
});

test('the search finds what it looks for: the same answers to a reviewer and an editor hold it', async () => {
  const reviewer = await b.reviewer.call('get', `/v1/submissions/${own.reference}`).expect(200);
  expect(reviewer.text).toContain('unit-slip');
  const editor = await b.editor.call('get', '/v1/catalogue/spools').expect(200);
  expect(TELLING.filter((telling) => editor.text.includes(telling)).length).toBeGreaterThan(0);
});
