/** A season from an empty house over HTTP, in which everything that people get wrong is got wrong, and put right. */
import { AccountsModule } from '../../api/accounts/accounts.module.js';
import { Invite } from '../../api/accounts/invite.js';
import { ReleaseWork } from '../../api/releases/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { pulls } from '../support/bench.js';
import { csvFile, inventPulls, pullRows } from '../support/hand-in-csv.js';
import { METHOD_SERIES } from '../support/method-series.js';
import { Mistakes } from '../support/mistakes.js';
import type { Person } from '../support/mistakes.js';
import { FORCE_SCHEME, METHOD_VERSION } from '../support/season.js';
import { createTestApplication, PASSWORD } from '../support/test-application.js';
import type { TestApplication } from '../support/test-application.js';
import type { Role } from '../../api/contract/roles.js';

let t: TestApplication;
let story: Mistakes;
let admin: Person;
let editor: Person;
let reviewer: Person;
let tester: Person;
let leaver: Person;
/** Editor and tester in one, as in a small house. */
let both: Person;
const codes = new Map<string, string>();

beforeAll(async () => {
  t = await createTestApplication();
  story = new Mistakes(t);
  await t.app.select(ReleasesModule).get(ReleaseWork).start(false);
}, 60_000);
afterAll(() => t.close());

const day = (date: string) => (t.clock.time = new Date(`${date}T12:00:00Z`));
const make = async (by: Person, path: string, body: object) => (await story.done(by.ask('post', path, { body }))).body as any;
const read = async (by: Person, path: string) => (await story.done(by.ask('get', path))).body as any;
const versionOf = async (by: Person, path: string) => (await read(by, path)).version as number;
/** Changes a thing at the version that it stands at. */
const change = async (by: Person, path: string, body: object, at = path, method: 'patch' | 'put' | 'post' = 'patch') =>
  (await story.done(by.ask(method, path, { body, version: await versionOf(by, at) }))).body as any;

async function invite(name: string, roles: Role[]): Promise<Person> {
  const { secret } = await make(admin, '/v1/invitations', { roles, note: name });
  return story.join(secret, name, roles);
}

test('people come, and what lets them in goes astray', async () => {
  day('2026-01-05');
  const first = await t.app
    .select(AccountsModule)
    .get(Invite)
    .run(null, { roles: ['admin'], note: 'first' });
  admin = await story.join(first.secret, 'Ada Brill', ['admin']);
  const wrong = await make(admin, '/v1/invitations', { roles: ['admin'], note: 'a tester' });
  await story.done(admin.ask('delete', `/v1/invitations/${wrong.id}`));
  const acceptance = { email: 'late@bench.example', displayName: 'Late', password: PASSWORD };
  await story.refused(
    'an invitation with the wrong role was taken back, and is tried',
    'accounts/invitation-not-valid',
    story.nobody('post', `/v1/invitations/${wrong.secret}/acceptance`, { body: acceptance }),
    async () => (tester = await invite('Tom Venn', ['tester'])),
  );
  editor = await invite('Edda Sallow', ['editor']);
  reviewer = await invite('Rita Dunlin', ['reviewer']);
  leaver = await invite('Lea Vanner', ['tester']);
  both = await invite('Bo Thorne', ['editor', 'tester']);

  await story.refused(
    'the only admin gives the role away',
    'accounts/last-admin',
    admin.ask('patch', `/v1/accounts/${admin.accountId}`, { body: { roles: ['editor'] }, version: 1 }),
    () => story.done(admin.ask('patch', `/v1/accounts/${editor.accountId}`, { body: { roles: ['editor', 'admin'] }, version: 1 })),
  );
  const signIn = (person: Person, password: string) => story.nobody('post', '/v1/sessions', { body: { email: person.email, password } });
  await story.refused('a password is forgotten', 'accounts/wrong-credentials', signIn(leaver, 'was it this one?'), async () => {
    const { body } = await story.done(admin.browse('post', `/v1/accounts/${leaver.accountId}/password-resets`));
    const at = `/v1/password-resets/${body.secret}/password`;
    await story.done(story.nobody('post', at, { body: { password: 'a newer password' } }));
    await story.done(signIn(leaver, 'a newer password'));
    await story.refused(
      'the address to set it is used again',
      'accounts/reset-not-valid',
      story.nobody('post', at, { body: { password: PASSWORD } }),
      () => story.done(signIn(leaver, 'a newer password')),
    );
  });
  // A reset ends what was open: a new token.
  leaver = await story.comeBack(leaver, 'a newer password', ['tester']);
  await story.corrected('a token was left on a bench computer', async () => {
    const lost = (await story.done(tester.browse('post', '/v1/tokens', { body: { name: 'bench', scopes: ['tester'] } }))).body;
    await story.done(tester.browse('delete', `/v1/tokens/${lost.id}`));
  });
  await story.corrected('a session was left open elsewhere', async () => {
    await story.done(reviewer.browse('delete', '/v1/sessions'));
    reviewer = await story.comeBack(reviewer, PASSWORD, ['reviewer']);
  });
});

const LINE = { slug: 'quay-eight', maker: 'quay', name: 'Quay Eight', material: 'UHMWPE', construction: 'braided', carriers: 8 };
const spoolOf = (variant: string, obtainedOn = '2026-01-04') => ({
  variant,
  source: 'bought',
  obtainedOn,
  place: 'shop at the quay',
  lot: null,
  lengthM: '150',
});
const claim = (text: string, unit = 'lbf') => ({ basis: 'average', printed: { text, unit }, seenOn: '2026-01-04', source: 'label' });
const VALID = { validFrom: '2026-01-01', validUntil: '2026-12-31', correctionPercent: '0', coverageFactor: '2' };
const GAUGE = { kind: 'forceGauge', name: 'Gauge', capacity: { text: '500', unit: 'N' }, resolution: { text: '0.01', unit: 'N' } };

test('the catalogue is mistyped', async () => {
  await make(editor, '/v1/catalogue/makers', { slug: 'quay', name: 'Qauy Lines' });
  await story.corrected('a maker is mistyped', () => change(editor, '/v1/catalogue/makers/quay', { name: 'Quay Lines' }));
  await make(editor, '/v1/catalogue/lines', { ...LINE, densityGPerCm3: '9.7' });
  await story.corrected('the density of a line is mistyped', () =>
    change(editor, '/v1/catalogue/lines/quay-eight', { densityGPerCm3: '0.97' }),
  );
  for (const rating of ['20', '30', '40']) {
    const slug = `quay-${rating}`;
    await make(editor, '/v1/catalogue/variants', { slug, line: LINE.slug, size: rating, colour: 'moss' });
    const path = `/v1/catalogue/variants/${slug}/claims`;
    const send = (unit: string) => editor.ask('post', path, { body: { quantity: 'breakingForce', ...claim(rating, unit) } });
    if (rating === '20')
      await story.refused('a label says lb, and so does the claim', 'request/not-valid', send('lb'), () => story.done(send('lbf')));
    else await story.done(send('lbf'));
    codes.set(slug, (await make(editor, '/v1/catalogue/spools', spoolOf(slug))).blindCode);
  }
  await story.corrected('a variant has the wrong colour', () => change(editor, '/v1/catalogue/variants/quay-20', { colour: 'sand' }));
  await story.corrected('a claim is mistyped', () =>
    change(editor, '/v1/catalogue/variants/quay-30/claims/breakingForce', claim('31'), '/v1/catalogue/variants/quay-30', 'put'),
  );
  await story.corrected('a spool was obtained another day', () =>
    change(editor, `/v1/catalogue/spools/${codes.get('quay-40')}`, { obtainedOn: '2026-01-03' }),
  );
  await story.corrected('a spool is filed under the wrong variant', async () => {
    const { blindCode } = await make(editor, '/v1/catalogue/spools', spoolOf('quay-20'));
    await change(editor, `/v1/catalogue/spools/${blindCode}`, { variant: 'quay-30' });
  });
  await make(editor, '/v1/catalogue/makers', { slug: 'gone', name: 'Gone Lines' });
  const retirement = (method: 'post' | 'delete', version: number, body?: object) =>
    editor.ask(method, '/v1/catalogue/makers/gone/retirement', { version, ...(body && { body }) });
  await story.done(retirement('post', 1, { reason: 'No longer trades.' }));
  await story.refused(
    'a line is added to a retired maker',
    'retired',
    editor.ask('post', '/v1/catalogue/lines', { body: { ...LINE, slug: 'gone-eight', maker: 'gone', densityGPerCm3: '0.97' } }),
    async () => {
      expect((await read(editor, '/v1/catalogue/makers/gone')).retired).toMatchObject({ reason: 'No longer trades.' });
      await story.done(retirement('delete', 2));
    },
  );
});

test('the bench is fitted out, with slips', async () => {
  const register = (body: object) => editor.ask('post', '/v1/instruments', { body });
  await story.refused('a code that no pull could name', 'request/not-valid', register({ ...GAUGE, code: 'gauge_1' }), () =>
    story.done(register({ ...GAUGE, code: 'gauge-1' })),
  );
  await story.refused(
    'a gauge in kg',
    'request/not-valid',
    register({ ...GAUGE, code: 'R2', capacity: { text: '50', unit: 'kg' } }),
    () => story.done(register({ ...GAUGE, code: 'R2', capacity: { text: '50', unit: 'kgf' }, resolution: { text: '0.001', unit: 'kgf' } })),
  );
  for (const code of ['gauge-1', 'R2'])
    await make(editor, `/v1/instruments/${code}/calibrations`, { ...VALID, certificate: `C-${code}`, expandedUncertaintyPercent: '5' });
  await story.corrected('the uncertainty of a certificate is mistyped', () =>
    change(
      editor,
      '/v1/instruments/gauge-1/calibrations/C-gauge-1',
      { ...VALID, certificate: 'C-gauge-1', expandedUncertaintyPercent: '0.5' },
      '/v1/instruments/gauge-1',
      'put',
    ),
  );
  for (const slug of ['straight-pull', 'diameter'] as const) {
    await make(editor, '/v1/catalogue/methods', { slug, name: slug });
    await make(editor, `/v1/catalogue/methods/${slug}/versions`, { ...METHOD_VERSION, series: METHOD_SERIES[slug] });
  }
  await make(editor, '/v1/control-lines', { code: 'C1', name: 'Reference', lot: 'K-7', words: 'One spool, kept dark.' });
  const [force] = FORCE_SCHEME.rules.categories;
  const schemeOf = (category: object) => ({
    ...FORCE_SCHEME,
    rules: { ...FORCE_SCHEME.rules, categories: [{ ...force, ...category }] },
  });
  await story.refused(
    'a category ranks a series that its method does not yield',
    'unknown_series',
    editor.ask('post', '/v1/schemes', { body: schemeOf({ series: 'knotted' }) }),
    () => make(editor, '/v1/schemes', schemeOf({})),
  );
});

const BOARD = '/v1/editions/2026/board';
const EDITION = '/v1/bench/editions/2026';
const step = async (name: 'opening' | 'closure') =>
  editor.ask('post', `/v1/editions/2026/${name}`, { version: await versionOf(editor, EDITION) });
const amend = (body: object) => change(editor, '/v1/editions/2026/amendments', body, EDITION, 'post');

test('the edition is planned wrongly, and opened too early', async () => {
  const plan = { slug: '2026', name: 'Winter', scheme: { slug: FORCE_SCHEME.slug, number: 1 }, previous: null };
  const methods = [{ slug: 'straight-pull', number: 1 }];
  const planned = (body: object) => editor.ask('post', '/v1/editions', { body: { ...plan, methods, opensOn: '2026-01-10', ...body } });
  await story.refused('an edition closes before it opens', 'request/not-valid', planned({ closesOn: '2025-03-31' }), () =>
    story.done(planned({ closesOn: '2026-02-28' })),
  );
  await story.corrected('an edition is planned twice', async () => {
    await story.done(planned({ slug: 'winter-2026', closesOn: '2026-02-28' }));
    await story.done(editor.ask('delete', '/v1/editions/winter-2026', { version: 1 }));
  });
  await story.corrected('the name and the days of a plan are wrong', () =>
    change(editor, '/v1/editions/2026', { name: 'Winter trials', opensOn: '2026-01-08' }, EDITION),
  );
  await story.refused('it is opened without entries', 'editions/nothing-to-open', step('opening'), async (told) => {
    expect((await read(editor, BOARD)).standsInTheWay).toHaveLength(told.errors!.length);
    await make(editor, '/v1/editions/2026/entries', { variants: ['quay-20', 'quay-40'] });
    await story.done(editor.ask('delete', '/v1/editions/2026/entries/quay-40', { version: await versionOf(editor, EDITION) }));
    await make(editor, '/v1/editions/2026/entries', { variants: ['quay-30'] });
    await story.done(step('opening'));
  });
  await story.refused(
    'an entry is missing when it is open already',
    'editions/wrong-state',
    editor.ask('post', '/v1/editions/2026/entries', { body: { variants: ['quay-40'] } }),
    () => amend({ variants: ['quay-40'], reason: 'It came late.' }),
  );
  await story.corrected('a method was forgotten', () => amend({ methods: [{ slug: 'diameter', number: 1 }], reason: 'It was forgotten.' }));
  await story.refused(
    'the closing day is too early',
    'editions/wrong-state',
    editor.ask('patch', '/v1/editions/2026', { body: { closesOn: '2026-03-31' }, version: await versionOf(editor, EDITION) }),
    () => amend({ closesOn: '2026-03-31', reason: 'A rig was down.' }),
  );
});

const controlPull = (benchDay: string, forces: readonly number[], more: object = {}) => ({
  controlLine: 'C1',
  instrument: 'gauge-1',
  method: 'straight-pull',
  benchDay,
  readings: forces.map((value) => ({ text: value.toFixed(2), unit: 'N' })),
  ...more,
});

test('the control line is pulled on the wrong days, and twice', async () => {
  day('2026-01-19');
  const send = (body: object) => tester.ask('post', '/v1/control-pulls', { body });
  for (let i = 9; i < 19; i++) await story.done(send(controlPull(`2026-01-${String(i).padStart(2, '0')}`, [84 + (i % 2), 84.2 + (i % 2)])));
  expect((await read(tester, '/v1/rigs')).items).toContainEqual(expect.objectContaining({ instrument: 'gauge-1', state: 'learning' }));
  const last = controlPull('2026-01-19', [84.4, 84.8]);
  await story.refused(
    'a control pull bears the day of last week',
    'control-pulls/out-of-order',
    send({ ...last, benchDay: '2026-01-12' }),
    () => story.done(send(last)),
  );
  await story.refused('the same control pull is sent again', 'control-pulls/handed-in-before', send(last), async (told) => {
    expect(told.detail).toMatch(/[0-9a-f]{8}-/);
    await story.done(send({ ...last, note: 'Pulled once more at noon.' }));
  });
  const { id } = (await story.done(send(controlPull('2026-01-19', [8.44, 8.48], { note: 'A comma slipped.' })))).body as { id: string };
  await story.corrected('a comma slips in a control pull', () =>
    make(reviewer, `/v1/control-pulls/${id}/strike`, { reason: 'A comma slipped.' }),
  );
});

const MEAN_N = { 'quay-20': 91, 'quay-30': 140, 'quay-40': 176 } as const;
type Slug = keyof typeof MEAN_N;
const SLUGS = Object.keys(MEAN_N) as Slug[];
const rowsOf = (slug: Slug, seed: number, { unit = 'N', per = 1, benchDay = '2026-01-19', instrument = 'gauge-1' } = {}) =>
  pullRows(
    { edition: '2026', spool: codes.get(slug)!, instrument, benchDay },
    'straight-pull',
    inventPulls(MEAN_N[slug] / per, 'untreated', seed),
    unit,
  );
const sendFile = (by: Person, body: string, path = '/v1/submissions') => by.ask('post', path, { body, type: 'text/csv' });
interface HandedIn {
  submissions: { reference: string; findings: { code: string; message: string }[] }[];
}
const handedIn = async (by: Person, body: string) => ((await story.done(sendFile(by, body))).body as HandedIn).submissions;

test('a bench day is handed in by file, with everything that spreadsheets do to one', async () => {
  const good = rowsOf('quay-20', 1);
  const file = csvFile(good);
  const look = (body: string) => sendFile(tester, body, '/v1/submissions/preview');
  const slips: readonly (readonly [mistake: string, code: string, body: string])[] = [
    ['a workbook', 'file_is_workbook', 'PK\u0003\u0004 and what follows'],
    ['a date as spreadsheets write it', 'row_not_valid', file.replaceAll('2026-01-19', '19/01/2026')],
    ['lb for lbf', 'row_not_valid', file.replaceAll(',N,', ',lb,')],
    ['kg for kgf', 'row_not_valid', file.replaceAll(',N,', ',kg,')],
    ['a rig that nobody registered', 'unknown_instrument', file.replaceAll('gauge-1', 'gauge-7')],
    ['a specimen twice', 'row_not_valid', csvFile([...good, good[2]!])],
    ['a day to come', 'date/in-the-future', file.replaceAll('2026-01-19', '2026-02-19')],
    ['a spool that is none', 'unknown_spool', file.replaceAll(codes.get('quay-20')!, 'AAAAAAA')],
    ['a column of one’s own', 'column_unknown', file.replace('force unit', 'my unit')],
  ];
  for (const [mistake, code, body] of slips) await story.refused(mistake, code, sendFile(tester, body), () => story.done(look(file)));
  for (const [mistake, body] of [
    ['tabs', file.replaceAll(',', '\t')],
    ['semicolons, told by sep=', `sep=;\r\n${file.replaceAll(',', ';')}`],
  ] as const)
    await story.corrected(mistake, () => story.done(look(body)));
  const [{ reference }] = (await handedIn(tester, file)) as [{ reference: string }];
  await story.refused('the same file is handed in again', 'handed_in_before', sendFile(tester, file), async (told) => {
    expect(told.errors![0]!.detail).toContain(reference);
    await read(tester, `/v1/submissions/${reference}`);
  });
});

test('a whole day was read in kgf and written down as lbf: the answer names the factor, and it is taken back', async () => {
  const day19 = (unit: string) => csvFile(SLUGS.flatMap((slug) => rowsOf(slug, 3, { unit, per: 9.80665, instrument: 'R2' })));
  const wrong = await handedIn(tester, day19('lbf'));
  expect(wrong.flatMap(({ findings }) => findings.map(({ message }) => message)).join(' ')).toContain('2.2046');
  await story.corrected('kgf is written down as lbf', async () => {
    for (const { reference } of wrong)
      await story.done(tester.ask('post', `/v1/submissions/${reference}/taking-back`, { version: 1 }));
    await handedIn(tester, day19('kgf'));
  });
});

/** One submission by JSON. */
const content = (slug: Slug, forceN: number, more: object = {}) => ({
  edition: '2026',
  spool: codes.get(slug),
  method: 'straight-pull',
  methodVersion: 1,
  benchDay: '2026-01-19',
  zone: 'Europe/Lisbon',
  instruments: ['gauge-1'],
  ambient: { temperature: { value: '21.5', unit: '°C' }, humidityPercent: '55' },
  specimens: pulls(forceN),
  ...more,
});
const handIn = (by: Person, body: object) => by.ask('post', '/v1/submissions', { body });
const reference = async (by: Person, body: object) => (await story.done(handIn(by, body))).body.reference as string;

test('a draft is begun with two fields, a day goes badly, and bench days lie before the edition and the spool', async () => {
  const { edition, spool, method, methodVersion, benchDay } = content('quay-30', 139);
  const begun = await make(tester, '/v1/drafts', { content: { edition, spool, method, methodVersion, benchDay } });
  const at = `/v1/submissions/${begun.reference}/revisions`;
  const whole = content('quay-30', 139);
  await story.refused(
    'a draft is handed in before it is whole',
    'request/not-valid',
    tester.ask('post', at, { body: { edition, spool, method, methodVersion, benchDay }, version: 1 }),
    () => story.done(tester.ask('post', at, { body: whole, version: 1 })),
  );
  const bad = content('quay-40', 175, {
    specimens: pulls(175).map((specimen, i) => (i < 7 ? { ...specimen, validity: 'invalid', invalidReason: 'slipped' } : specimen)),
  });
  await story.refused('seven of ten specimens slip', 'submissions/blocked', handIn(tester, bad), () =>
    reference(tester, { ...bad, fewerBecause: 'The grip slipped until its jaws were cleaned.' }),
  );
  for (const [mistake, early, code] of [
    ['a bench day before the edition opened', '2026-01-06', 'date/before-the-edition'],
    ['a bench day before the spool was there', '2025-12-30', 'date/before-the-edition'],
  ] as const) {
    const { body } = await story.done(handIn(tester, content('quay-40', early < '2026' ? 173 : 174, { benchDay: early })));
    expect((body.findings as { code: string }[]).map((finding) => finding.code)).toContain(code);
    await story.corrected(mistake, () => story.done(tester.ask('post', `/v1/submissions/${body.reference}/taking-back`, { version: 1 })));
  }
});

interface Seen {
  readonly version: number;
  readonly state: string;
  readonly findings: readonly { id: string; code: string; severity: string }[];
}
const see = (name: string) => read(reviewer, `/v1/submissions/${name}`) as Promise<Seen>;
const review = (name: string, version: number, body: object) => reviewer.ask('post', `/v1/submissions/${name}/reviews`, { body, version });
const accept = async (name: string): Promise<void> => {
  const { version, findings } = await see(name);
  const resolutions = findings
    .filter(({ severity }) => severity === 'held')
    .map(({ id }) => ({ finding: id, words: 'Looked at; it stands.' }));
  await story.done(review(name, version, { decision: 'accepted', resolutions }));
};
const sendBack = async (name: string, question = 'What does the film show for specimen 3?') =>
  story.done(review(name, (await see(name)).version, { decision: 'returned', query: { specimens: [3], question } }));

test('the reviewer sends back: a revision by file, one for the wrong spool, one that was declined in error', async () => {
  const one = await reference(tester, content('quay-20', 92));
  const { version, findings } = await see(one);
  expect(findings.some(({ severity }) => severity === 'held')).toBe(false);
  await sendBack(one);
  const again = (name: string, body: string, at: number) =>
    tester.ask('post', `/v1/submissions/${name}/revisions`, { body, type: 'text/csv', version: at });
  const query = (await read(tester, '/v1/queries')).items[0] as { id: string };
  await story.refused(
    'a question is left unanswered',
    'submissions/query-open',
    again(one, csvFile(rowsOf('quay-20', 5)), version + 1),
    () => make(tester, `/v1/queries/${query.id}/answer`, { answer: 'The display read 91.' }),
  );
  await story.refused(
    'a revision is of another spool',
    'other_spool',
    again(one, csvFile(rowsOf('quay-30', 5)), await versionOf(tester, `/v1/submissions/${one}`)),
    async () => story.done(again(one, csvFile(rowsOf('quay-20', 5)), await versionOf(tester, `/v1/submissions/${one}`))),
  );
  await story.refused(
    'a withdrawal of what is not accepted is proposed',
    'proposals/never-possible',
    reviewer.ask('post', '/v1/proposals', { body: { kind: 'withdrawal', submission: one, reason: 'A bent grip.' } }),
    () => accept(one),
  );
  const propose = () => make(reviewer, '/v1/proposals', { kind: 'withdrawal', submission: one, reason: 'A bent grip.' });
  const [first, second] = [(await propose()).id as string, (await propose()).id as string];
  expect((await read(editor, '/v1/inbox')).items.map(({ code }: { code: string }) => code)).toContain('proposals_open');
  await story.corrected('a proposal was made twice', async () => {
    await make(reviewer, `/v1/proposals/${first}/cancellation`, { reason: 'Made twice.' });
    await make(editor, `/v1/proposals/${second}/refusal`, { reason: 'It was the other rig.' });
  });
  expect((await read(editor, '/v1/proposals?state=open')).items).toEqual([]);
});

test('who has read the key hands in: it is marked, held, and counts once the reviewer has answered for it', async () => {
  await read(both, `/v1/catalogue/spools/${codes.get('quay-30')}`);
  const { body } = await story.done(handIn(both, content('quay-30', 141)));
  expect(body).toMatchObject({ isBlind: false });
  const { version } = await see(body.reference);
  await story.refused(
    'a hand-in that is not blind is accepted without a word',
    'request/not-valid',
    review(body.reference, version, { decision: 'accepted' }),
    () => accept(body.reference),
  );
});

test('a tester leaves, a row is mistyped on which readings rest, and the edition is closed too early', async () => {
  const left = await reference(leaver, content('quay-40', 179));
  await sendBack(left);
  await story.done(admin.ask('patch', `/v1/accounts/${leaver.accountId}`, { body: { isDisabled: true }, version: 1 }));
  const claimed = (body: object) => change(editor, '/v1/catalogue/variants/quay-20/claims/breakingForce', body, '/v1/catalogue/variants/quay-20', 'put');
  const wrong = editor.ask('put', '/v1/catalogue/variants/quay-20/claims/breakingForce', {
    body: claim('21'),
    version: await versionOf(editor, '/v1/catalogue/variants/quay-20'),
  });
  await story.refused('a label is corrected on which submissions rest', 'reason_needed', wrong, async () => {
    const { former } = await claimed({ ...claim('21'), reason: 'Read again on the box.' });
    expect(former[0]).toMatchObject({ reason: 'Read again on the box.', rested: { editions: ['2026'] } });
  });
  day('2026-03-20');
  await story.refused('the edition is closed over what is not decided', 'editions/work-in-progress', step('closure'), async (told) => {
    expect((await read(editor, BOARD)).standsInTheWay).toHaveLength(told.errors!.length);
    await make2(left);
    for (const { reference: name } of (await read(reviewer, '/v1/submissions?state=submitted&limit=200')).items as { reference: string }[])
      await accept(name);
    await story.done(step('closure'));
  });
  expect(await read(editor, EDITION)).toMatchObject({ state: 'closed', closesOn: '2026-03-31', closedOn: '2026-03-20' });
});

/** The editor closes what was returned to somebody who has left. */
async function make2(name: string): Promise<void> {
  const version = (await see(name)).version;
  await story.done(editor.ask('post', `/v1/submissions/${name}/closure`, { body: { reason: 'Its tester has left.' }, version }));
}
