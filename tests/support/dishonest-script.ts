/** All that a dishonest tester tries, in order, and what others do meanwhile (in brackets). */
import type { Response, Test } from 'supertest';
import { contentFor, pulls } from './bench.js';
import { OTHER_VARIANT } from './catalogue-fixtures.js';
import { csvFile, inventPulls, pullRows } from './hand-in-csv.js';
import { proposeReidentification } from './propose.js';
import type { HouseOfTwo } from './two-houses.js';

/** What is sent: a route for the count, and the call. */
export type Step = readonly [route: string, call: (house: HouseOfTwo, seen: ReadonlyMap<string, string>) => Test | Promise<Response>];

const FORCES = [2, 5, 13.3, 26.7, 53, 90, 178, 355.9, 490];
const read = (route: string, path = route.slice(4)): Step => [route, ({ cheat }) => cheat.call('get', path)];
const content = (spool: string, forceN: number, change: object = {}) =>
  contentFor(spool, { benchDay: '2026-04-10', specimens: pulls(forceN), ...change });
const diameter = (spool: string, mm: number) =>
  contentFor(spool, {
    benchDay: '2026-04-10',
    method: 'diameter',
    instruments: ['M1'],
    specimens: [1, 2].map((number) => ({
      number,
      readings: [1, 2, 3, 4, 5].flatMap((station) => [
        { role: 'wideDiameter', station, value: (mm + 0.002 * station).toFixed(3), unit: 'mm' },
        { role: 'narrowDiameter', station, value: (mm + 0.001).toFixed(3), unit: 'mm' },
      ]),
    })),
  });
const file = (spool: string, forces: readonly number[], benchDay = '2026-04-09') =>
  csvFile(
    forces.flatMap((force, index) =>
      pullRows(
        { edition: '2026', spool, instrument: 'R1', benchDay: index === 0 ? benchDay : `2026-04-0${index}` },
        'straight-pull',
        inventPulls(force, 'untreated', index),
      ),
    ),
  );

/** Looks again at all that shows something of one's own. */
const LOOKS: readonly Step[] = [
  read('GET /v1/spools', '/v1/spools?limit=200'),
  read('GET /v1/spools', '/v1/spools?limit=1'),
  read('GET /v1/submissions', '/v1/submissions?limit=200'),
  read('GET /v1/submissions', '/v1/submissions?state=submitted'),
  read('GET /v1/submissions', '/v1/submissions?inDoubt=true'),
  read('GET /v1/inbox'),
  read('GET /v1/queries'),
  read('GET /v1/rigs'),
  read('GET /v1/instruments'),
  read('GET /v1/instruments/:code', '/v1/instruments/R1'),
  read('GET /v1/bench/editions'),
  read('GET /v1/bench/editions/:edition', '/v1/bench/editions/2026'),
  read('GET /v1/catalogue/makers'),
  read('GET /v1/catalogue/makers/:slug', '/v1/catalogue/makers/far-shoal'),
  read('GET /v1/catalogue/methods'),
  read('GET /v1/round-robins'),
  read('GET /v1/round-robins/:slug', '/v1/round-robins/spring'),
  read('GET /v1/interests'),
  read('GET /v1/changes', '/v1/changes?limit=1000'),
  read('GET /v1/accounts/me'),
  // What a tester may not have is refused in the same words.
  ['GET /v1/catalogue/labels', ({ cheat, spool }) => cheat.call('get', `/v1/catalogue/labels?code=${spool}`)],
  ['GET /v1/catalogue/spools/:code', ({ cheat, spool }) => cheat.call('get', `/v1/catalogue/spools/${spool}`)],
  ['GET /v1/catalogue/variants/:slug', ({ cheat }) => cheat.call('get', '/v1/catalogue/variants/sought-1')],
  read('GET /v1/review-queue'),
  read('GET /v1/control-charts'),
  read('GET /v1/editions/:edition/retests', '/v1/editions/2026/retests'),
  ['GET /v1/submissions/:reference', ({ cheat }) => cheat.call('get', '/v1/submissions/S-2026-0001')],
];

export const own = (seen: ReadonlyMap<string, string>, name: string): string => seen.get(name) ?? 'none';
const ofOwn = (name: string): readonly Step[] => [
  ['GET /v1/submissions/:reference', ({ cheat }, seen) => cheat.call('get', `/v1/submissions/${own(seen, name)}`)],
  ['GET /v1/submissions/:reference/actions', ({ cheat }, seen) => cheat.call('get', `/v1/submissions/${own(seen, name)}/actions`)],
  ['GET /v1/submissions/:reference/traces', ({ cheat }, seen) => cheat.call('get', `/v1/submissions/${own(seen, name)}/traces`)],
  [
    'GET /v1/submissions/:reference/revisions/:number/changes',
    ({ cheat }, seen) => cheat.call('get', `/v1/submissions/${own(seen, name)}/revisions/2/changes`),
  ],
];

const post = (path: string, body: (spool: string) => object | string, type = 'application/json'): Step => [
  `POST ${path}`,
  ({ cheat, spool }) => cheat.call('post', path).set('Content-Type', type).send(body(spool)),
];
const PREVIEW = '/v1/submissions/preview';
const HAND_IN = '/v1/submissions';

/** An answer under a name, by which later steps find its reference. */
export type NamedStep = readonly [...Step, name?: string];

export function dishonestScript(): NamedStep[] {
  const previews: Step[] = [
    ...FORCES.map((force) => post(PREVIEW, (spool) => content(spool, force))),
    ...[0.05, 0.21, 0.42, 1.5].map((mm) => post(PREVIEW, (spool) => diameter(spool, mm))),
    ...['2026-01-02', '2026-02-10', '2026-03-25', '2026-04-14'].map((benchDay) =>
      post(PREVIEW, (spool) => content(spool, 90, { benchDay })),
    ),
    ...[['R1'], ['R2'], ['M1'], ['R1', 'R2']].map((instruments) => post(PREVIEW, (spool) => content(spool, 90, { instruments }))),
    post(PREVIEW, (spool) => ({ ...content(spool, 90), methodVersion: 9 })),
    post(PREVIEW, (spool) => file(spool, FORCES.slice(0, 5)), 'text/csv'),
    post(PREVIEW, (spool) => file(spool, FORCES), 'text/csv'),
  ];
  const handIns: NamedStep[] = FORCES.map((force, i) => {
    const [route, call] = post(HAND_IN, (spool) => content(spool, force, { note: `Day ${i}` }));
    return [route, call, `day ${i}`];
  });
  return [
    ...previews,
    ...LOOKS,
    ['POST /v1/drafts', ({ cheat, spool }) => cheat.call('post', '/v1/drafts').send({ content: content(spool, 80) }), 'draft'],
    [
      'PUT /v1/drafts/:reference',
      ({ cheat, spool }, seen) =>
        cheat
          .call('put', `/v1/drafts/${own(seen, 'draft')}`)
          .set('If-Match', '"1"')
          .send({ content: content(spool, 355) }),
    ],
    ['GET /v1/drafts/:reference/history', ({ cheat }, seen) => cheat.call('get', `/v1/drafts/${own(seen, 'draft')}/history`)],
    [
      'POST /v1/submissions/:reference/revisions',
      ({ cheat, spool }, seen) =>
        cheat
          .call('post', `/v1/submissions/${own(seen, 'draft')}/revisions`)
          .set('If-Match', '"2"')
          .send(content(spool, 355)),
    ],
    ...ofOwn('draft'),
    ...handIns,
    post(HAND_IN, (spool) => diameter(spool, 0.31)),
    post(HAND_IN, (spool) => content(spool, 90, { benchDay: '2026-02-10' })),
    post(HAND_IN, (spool) => content(spool, 26.7, { note: 'Day 3' })),
    post(HAND_IN, (spool) => file(spool, [27, 371], '2026-04-08'), 'text/csv'),
    post(`${HAND_IN}?partial=true`, (spool) => file(spool, [33, 36], '2026-04-07'), 'text/csv'),
    ...FORCES.flatMap((_, i) => ofOwn(`day ${i}`)),
    ...LOOKS,
    [
      'POST /v1/submissions/:reference/traces',
      ({ cheat }, seen) =>
        cheat
          .call('post', `/v1/submissions/${own(seen, 'day 2')}/traces?specimen=1`)
          .set('If-Match', '"1"')
          .set('Content-Type', 'text/csv')
          .send('Extension (mm),Force (N)\n0,0\n1,1\n2,2\n3,3.13\n'),
    ],
    // The reviewer does the same to both.
    [
      '(a reviewer returns it)',
      ({ b }, seen) =>
        b.reviewer
          .call('post', `/v1/submissions/${own(seen, 'day 1')}/reviews`)
          .set('If-Match', '"1"')
          .send({ decision: 'returned', query: { kind: 'reading', specimens: [1], question: 'Please look at specimen 1.' } }),
    ],
    ...LOOKS,
    ...ofOwn('day 1'),
    [
      'POST /v1/queries/:id/answer',
      async ({ cheat }) => {
        const { body } = (await cheat.call('get', '/v1/queries')) as { body: { items: { id: string }[] } };
        return cheat.call('post', `/v1/queries/${body.items[0]?.id ?? 'none'}/answer`).send({ answer: 'As displayed.' });
      },
    ],
    [
      'POST /v1/submissions/:reference/revisions',
      async ({ cheat, spool }, seen) => {
        const { body } = (await cheat.call('get', `/v1/submissions/${own(seen, 'day 1')}`)) as { body: { version: number } };
        return cheat
          .call('post', `/v1/submissions/${own(seen, 'day 1')}/revisions`)
          .set('If-Match', `"${body.version}"`)
          .send(content(spool, 5, { note: 'Read again' }));
      },
    ],
    ...ofOwn('day 1'),
    [
      'POST /v1/submissions/:reference/taking-back',
      ({ cheat }, seen) => cheat.call('post', `/v1/submissions/${own(seen, 'day 4')}/taking-back`).set('If-Match', '"1"'),
    ],
    [
      'POST /v1/control-pulls',
      ({ cheat }) =>
        cheat.call('post', '/v1/control-pulls').send({
          controlLine: 'C1',
          instrument: 'R1',
          method: 'straight-pull',
          benchDay: '2026-04-10',
          readings: [{ text: '84.1', unit: 'N' }],
        }),
    ],
    [
      'POST /v1/round-robins/:slug/cells',
      ({ cheat, spool }) =>
        cheat
          .call('post', '/v1/round-robins/spring/cells')
          .send({ spool, instrument: 'R1', readings: ['26', '27', '28'].map((text) => ({ text, unit: 'N' })) }),
    ],
    ...LOOKS,
    ...retestSteps(),
    ...catalogueSteps(),
    ...LOOKS,
    ...previews,
  ];
}

/** An own result is accepted and drawn: its spool comes back under a code that no answer may tell from any other. */
function retestSteps(): NamedStep[] {
  const onNew =
    (call: (house: HouseOfTwo, code: string) => Test): Step[1] =>
    async (house): Promise<Response> => {
      const [row] = await house.b.sql('SELECT p.blind_code FROM retest r JOIN spool p ON p.id = r.spool_id');
      return call(house, String(row?.blind_code));
    };
  return [
    [
      '(a reviewer accepts it)',
      async ({ b }, seen) => {
        const reference = own(seen, 'day 5');
        const { body } = (await b.reviewer.call('get', `/v1/submissions/${reference}`)) as {
          body: { version: number; findings: { id: string; severity: string }[] };
        };
        const resolutions = body.findings
          .filter(({ severity }) => severity === 'held')
          .map(({ id }) => ({ finding: id, words: 'Looked at.' }));
        return b.reviewer
          .call('post', `/v1/submissions/${reference}/reviews`)
          .set('If-Match', `"${body.version}"`)
          .send({ decision: 'accepted', resolutions });
      },
    ],
    ['(an editor draws)', ({ b }) => b.editor.call('post', '/v1/editions/2026/retests').send({ percent: 100 })],
    ...([['R1'], ['R2'], ['R1', 'R2']] as const).flatMap((instruments): Step[] => [
      ['POST /v1/submissions/preview', onNew(({ cheat }, code) => cheat.call('post', PREVIEW).send(content(code, 92, { instruments })))],
      [
        'POST /v1/submissions',
        onNew(({ cheat }, code) => cheat.call('post', HAND_IN).send(content(code, 93, { instruments, note: instruments.join(' ') }))),
      ],
    ]),
  ];
}

/** What is sought is put right while it lies on the bench: nobody is told of what is not published. */
function catalogueSteps(): NamedStep[] {
  const rename =
    (path: string, change: (name: string) => object): Step[1] =>
    async ({ b, lineName }) => {
      const { body } = await b.editor.call('get', path);
      const seen = (body as { version: number }).version;
      return b.editor
        .call('patch', path)
        .set('If-Match', `"${seen}"`)
        .send({ ...change(lineName), reason: 'Read again on the box.' });
    };
  return [
    ['(an editor renames its line)', rename('/v1/catalogue/lines/sought', (name) => ({ name }))],
    ['(an editor renames it)', rename('/v1/catalogue/variants/sought-1', (name) => ({ colour: name }))],
    [
      '(an editor re-identifies it)',
      async ({ b, spool, lineName }) => {
        const proposal = await proposeReidentification(b.reviewer, spool, OTHER_VARIANT.slug, lineName);
        const path = `/v1/catalogue/spools/${spool}`;
        const { body } = await b.editor.call('get', path);
        return b.editor
          .call('post', `${path}/reidentifications`)
          .set('If-Match', `"${(body as { version: number }).version}"`)
          .send({ proposal });
      },
    ],
  ];
}

/** What is looked at again and again to take the time. */
export const repeatedSteps = (): readonly Step[] => [...LOOKS, ...FORCES.map((force) => post(PREVIEW, (spool) => content(spool, force)))];
