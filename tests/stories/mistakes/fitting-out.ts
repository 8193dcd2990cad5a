/** The first chapter: people, catalogue and bench. */
import { AccountsModule } from '../../../api/accounts/accounts.module.js';
import { Invite } from '../../../api/accounts/invite.js';
import type { Role } from '../../../api/contract/roles.js';
import { METHOD_SERIES } from '../../support/method-series.js';
import type { Person } from '../../support/mistakes.js';
import { FORCE_SCHEME, METHOD_VERSION } from '../../support/season.js';
import { PASSWORD } from '../../support/test-application.js';
import { change, claim, codes, day, make, people, read, story } from './world.js';

async function invite(name: string, roles: Role[]): Promise<Person> {
  const { secret } = await make(people.admin, '/v1/invitations', { roles, note: name });
  return story.join(secret, name, roles);
}

const LINE = { slug: 'quay-eight', maker: 'quay', name: 'Quay Eight', material: 'UHMWPE', construction: 'braided', carriers: 8 };
const spoolOf = (variant: string, obtainedOn: string) => ({
  variant,
  source: 'bought',
  obtainedOn,
  place: 'shop at the quay',
  lot: null,
  lengthM: '150',
});
const VALID = { validFrom: '2026-01-01', validUntil: '2026-12-31', correctionPercent: '0', coverageFactor: '2' };
const GAUGE = { kind: 'forceGauge', name: 'Gauge', capacity: { text: '500', unit: 'N' }, resolution: { text: '0.01', unit: 'N' } };

export function fittingOut(): void {
  test('people come, and what lets them in goes astray', async () => {
    day('2026-01-05');
    const first = await story.t.app
      .select(AccountsModule)
      .get(Invite)
      .run(null, { roles: ['admin'], note: 'first' });
    people.admin = await story.join(first.secret, 'Ada Brill', ['admin']);
    const wrong = await make(people.admin, '/v1/invitations', { roles: ['admin'], note: 'a tester' });
    await story.done(people.admin.ask('delete', `/v1/invitations/${wrong.id}`));
    const acceptance = { email: 'late@bench.example', displayName: 'Late', password: PASSWORD };
    await story.refused(
      'an invitation with the wrong role was taken back, and is tried',
      'accounts/invitation-not-valid',
      story.nobody('post', `/v1/invitations/${wrong.secret}/acceptance`, { body: acceptance }),
      async () => (people.tester = await invite('Tom Venn', ['tester'])),
    );
    people.editor = await invite('Edda Sallow', ['editor']);
    people.reviewer = await invite('Rita Dunlin', ['reviewer']);
    people.leaver = await invite('Lea Vanner', ['tester']);
    people.both = await invite('Bo Thorne', ['editor', 'tester']);

    await story.refused(
      'the only admin gives the role away',
      'accounts/last-admin',
      people.admin.ask('patch', `/v1/accounts/${people.admin.accountId}`, { body: { roles: ['editor'] }, version: 1 }),
      () =>
        story.done(
          people.admin.ask('patch', `/v1/accounts/${people.editor.accountId}`, { body: { roles: ['editor', 'admin'] }, version: 1 }),
        ),
    );
    const signIn = (person: Person, password: string) => story.nobody('post', '/v1/sessions', { body: { email: person.email, password } });
    await story.refused('a password is forgotten', 'accounts/wrong-credentials', signIn(people.leaver, 'was it this one?'), async () => {
      const { body } = await story.done(people.admin.browse('post', `/v1/accounts/${people.leaver.accountId}/password-resets`));
      const at = `/v1/password-resets/${body.secret}/password`;
      await story.done(story.nobody('post', at, { body: { password: 'a newer password' } }));
      await story.done(signIn(people.leaver, 'a newer password'));
      await story.refused(
        'the address to set it is used again',
        'accounts/reset-not-valid',
        story.nobody('post', at, { body: { password: PASSWORD } }),
        () => story.done(signIn(people.leaver, 'a newer password')),
      );
    });
    // A reset ends what was open: a new token.
    people.leaver = await story.comeBack(people.leaver, 'a newer password', ['tester']);
    await story.corrected('a token was left on a bench computer', async () => {
      const lost = (await story.done(people.tester.browse('post', '/v1/tokens', { body: { name: 'bench', scopes: ['tester'] } }))).body;
      await story.done(people.tester.browse('delete', `/v1/tokens/${lost.id}`));
    });
    await story.corrected('a session was left open elsewhere', async () => {
      await story.done(people.reviewer.browse('delete', '/v1/sessions'));
      people.reviewer = await story.comeBack(people.reviewer, PASSWORD, ['reviewer']);
    });
  });

  test('the catalogue is mistyped', async () => {
    day('2026-01-12');
    await make(people.editor, '/v1/catalogue/makers', { slug: 'quay', name: 'Qauy Lines' });
    await story.corrected('a maker is mistyped', () => change(people.editor, '/v1/catalogue/makers/quay', { name: 'Quay Lines' }));
    await make(people.editor, '/v1/catalogue/lines', { ...LINE, densityGPerCm3: '9.7' });
    await story.corrected('the density of a line is mistyped', () =>
      change(people.editor, '/v1/catalogue/lines/quay-eight', { densityGPerCm3: '0.97' }),
    );
    for (const rating of ['20', '30', '40']) {
      const slug = `quay-${rating}`;
      await make(people.editor, '/v1/catalogue/variants', { slug, line: LINE.slug, size: rating, colour: 'moss' });
      const path = `/v1/catalogue/variants/${slug}/claims`;
      const send = (unit: string) => people.editor.ask('post', path, { body: { quantity: 'breakingForce', ...claim(rating, unit) } });
      if (rating === '20')
        await story.refused('a label says lb, and so does the claim', 'request/not-valid', send('lb'), () => story.done(send('lbf')));
      else await story.done(send('lbf'));
      const obtainedOn = rating === '20' ? '2026-01-10' : '2026-01-04';
      codes.set(slug, (await make(people.editor, '/v1/catalogue/spools', spoolOf(slug, obtainedOn))).blindCode);
    }
    await story.corrected('a variant has the wrong colour', () =>
      change(people.editor, '/v1/catalogue/variants/quay-20', { colour: 'sand' }),
    );
    await story.corrected('a claim is mistyped', () =>
      change(people.editor, '/v1/catalogue/variants/quay-30/claims/breakingForce', claim('31'), '/v1/catalogue/variants/quay-30', 'put'),
    );
    await story.corrected('a spool was obtained another day', () =>
      change(people.editor, `/v1/catalogue/spools/${codes.get('quay-40')}`, { obtainedOn: '2026-01-03' }),
    );
    await story.corrected('a spool is filed under the wrong variant', async () => {
      const { blindCode } = await make(people.editor, '/v1/catalogue/spools', spoolOf('quay-20', '2026-01-04'));
      await change(people.editor, `/v1/catalogue/spools/${blindCode}`, { variant: 'quay-30' });
    });
    await make(people.editor, '/v1/catalogue/makers', { slug: 'gone', name: 'Gone Lines' });
    const retirement = (method: 'post' | 'delete', version: number, body?: object) =>
      people.editor.ask(method, '/v1/catalogue/makers/gone/retirement', { version, ...(body && { body }) });
    await story.done(retirement('post', 1, { reason: 'No longer trades.' }));
    await story.refused(
      'a line is added to a retired maker',
      'retired',
      people.editor.ask('post', '/v1/catalogue/lines', { body: { ...LINE, slug: 'gone-eight', maker: 'gone', densityGPerCm3: '0.97' } }),
      async () => {
        expect((await read(people.editor, '/v1/catalogue/makers/gone')).retired).toMatchObject({ reason: 'No longer trades.' });
        await story.done(retirement('delete', 2));
      },
    );
  });

  test('the bench is fitted out, with slips', async () => {
    const register = (body: object) => people.editor.ask('post', '/v1/instruments', { body });
    await story.refused('a code that no pull could name', 'request/not-valid', register({ ...GAUGE, code: 'gauge_1' }), () =>
      story.done(register({ ...GAUGE, code: 'gauge-1' })),
    );
    await story.refused(
      'a gauge in kg',
      'request/not-valid',
      register({ ...GAUGE, code: 'R2', capacity: { text: '50', unit: 'kg' } }),
      () =>
        story.done(register({ ...GAUGE, code: 'R2', capacity: { text: '50', unit: 'kgf' }, resolution: { text: '0.001', unit: 'kgf' } })),
    );
    for (const code of ['gauge-1', 'R2'])
      await make(people.editor, `/v1/instruments/${code}/calibrations`, {
        ...VALID,
        certificate: `C-${code}`,
        expandedUncertaintyPercent: '5',
      });
    await story.corrected('the uncertainty of a certificate is mistyped', () =>
      change(
        people.editor,
        '/v1/instruments/gauge-1/calibrations/C-gauge-1',
        { ...VALID, certificate: 'C-gauge-1', expandedUncertaintyPercent: '0.5' },
        '/v1/instruments/gauge-1',
        'put',
      ),
    );
    for (const slug of ['straight-pull', 'diameter'] as const) {
      await make(people.editor, '/v1/catalogue/methods', { slug, name: slug });
      await make(people.editor, `/v1/catalogue/methods/${slug}/versions`, { ...METHOD_VERSION, series: METHOD_SERIES[slug] });
    }
    await make(people.editor, '/v1/control-lines', { code: 'C1', name: 'Reference', lot: 'K-7', words: 'One spool, kept dark.' });
    const [force] = FORCE_SCHEME.rules.categories;
    const schemeOf = (category: object) => ({
      ...FORCE_SCHEME,
      rules: { ...FORCE_SCHEME.rules, categories: [{ ...force, ...category }] },
    });
    await story.refused(
      'a category ranks a series that its method does not yield',
      'unknown_series',
      people.editor.ask('post', '/v1/schemes', { body: schemeOf({ series: 'knotted' }) }),
      () => make(people.editor, '/v1/schemes', schemeOf({})),
    );
  });
}
