/** The third chapter: what was handed in is decided, and published. */
import { csvFile } from '../../support/hand-in-csv.js';
import {
  accept,
  BOARD,
  change,
  claim,
  codes,
  content,
  day,
  EDITION,
  handIn,
  make,
  people,
  read,
  reference,
  review,
  rowsOf,
  see,
  sendBack,
  step,
  story,
  versionOf,
} from './world.js';

/** The editor closes what was returned to somebody who has left. */
async function closeReturned(name: string): Promise<void> {
  const version = (await see(name)).version;
  await story.done(people.editor.ask('post', `/v1/submissions/${name}/closure`, { body: { reason: 'Its tester has left.' }, version }));
}

interface Preview {
  published: { changes: { about: string; where: string; before: string | null }[] };
}

/** Orders a release and waits until readers have it. */
async function publish(erratum: object | null): Promise<number> {
  const { body } = await story.done(people.editor.ask('post', '/v1/editions/2026/releases', { body: { erratum } }));
  for (;;) {
    const { state } = await read(people.editor, `/v1/editions/2026/releases/${body.revision}`);
    if (state === 'published') return body.revision as number;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
}

export function decisions(): void {
  test('the reviewer sends back: a revision by file, one for the wrong spool, one that was declined in error', async () => {
    const one = await reference(people.tester, content('quay-20', 92));
    const { version } = await see(one);
    await sendBack(one);
    const again = (name: string, body: string, at: number) =>
      people.tester.ask('post', `/v1/submissions/${name}/revisions`, { body, type: 'text/csv', version: at });
    const query = (await read(people.tester, '/v1/queries')).items[0] as { id: string };
    await story.refused(
      'a question is left unanswered',
      'submissions/query-open',
      again(one, csvFile(rowsOf('quay-20', 5)), version + 1),
      () => make(people.tester, `/v1/queries/${query.id}/answer`, { answer: 'The display read 91.' }),
    );
    await story.refused(
      'a revision is of another spool',
      'other_spool',
      again(one, csvFile(rowsOf('quay-30', 5)), await versionOf(people.tester, `/v1/submissions/${one}`)),
      async () => story.done(again(one, csvFile(rowsOf('quay-20', 5)), await versionOf(people.tester, `/v1/submissions/${one}`))),
    );
    await story.refused(
      'a withdrawal of what is not accepted is proposed',
      'proposals/never-possible',
      people.reviewer.ask('post', '/v1/proposals', { body: { kind: 'withdrawal', submission: one, reason: 'A bent grip.' } }),
      () => accept(one),
    );
    const proposal = { kind: 'withdrawal', submission: one, reason: 'A bent grip.' };
    const first = await make(people.reviewer, '/v1/proposals', proposal);
    expect((await read(people.editor, '/v1/inbox')).items.map(({ code }: { code: string }) => code)).toContain('proposals_open');
    await story.refused(
      'a proposal is made twice',
      'proposals/made-before',
      people.reviewer.ask('post', '/v1/proposals', { body: { ...proposal, reason: 'A grip that was bent.' } }),
      async () => {
        await make(people.reviewer, `/v1/proposals/${first.id}/cancellation`, { reason: 'Badly said.' });
        const second = await make(people.reviewer, '/v1/proposals', { ...proposal, reason: 'A grip that was bent.' });
        await make(people.editor, `/v1/proposals/${second.id}/refusal`, { reason: 'It was the other rig.' });
      },
    );
    expect((await read(people.editor, '/v1/proposals?state=open')).items).toEqual([]);
  });

  test('who has read the key hands in: it is marked, held, and counts once the reviewer has answered for it', async () => {
    await read(people.both, `/v1/catalogue/spools/${codes.get('quay-30')}`);
    const { body } = await story.done(handIn(people.both, content('quay-30', 141)));
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
    const left = await reference(people.leaver, content('quay-40', 179));
    await sendBack(left);
    await story.done(people.admin.ask('patch', `/v1/accounts/${people.leaver.accountId}`, { body: { isDisabled: true }, version: 1 }));
    const claimed = (body: object) =>
      change(people.editor, '/v1/catalogue/variants/quay-20/claims/breakingForce', body, '/v1/catalogue/variants/quay-20', 'put');
    const wrong = people.editor.ask('put', '/v1/catalogue/variants/quay-20/claims/breakingForce', {
      body: claim('21'),
      version: await versionOf(people.editor, '/v1/catalogue/variants/quay-20'),
    });
    await story.refused('a label is corrected on which submissions rest', 'reason_needed', wrong, async () => {
      const { former } = await claimed({ ...claim('21'), reason: 'Read again on the box.' });
      expect(former[0]).toMatchObject({ reason: 'Read again on the box.', rested: { editions: ['2026'] } });
    });
    day('2026-03-20');
    await story.refused('the edition is closed over what is not decided', 'editions/work-in-progress', step('closure'), async (told) => {
      expect((await read(people.editor, BOARD)).standsInTheWay).toHaveLength(told.errors!.length);
      await closeReturned(left);
      for (const { reference: name } of (await read(people.reviewer, '/v1/submissions?state=submitted&limit=200')).items as {
        reference: string;
      }[])
        await accept(name);
      await story.done(step('closure'));
    });
    expect(await read(people.editor, EDITION)).toMatchObject({ state: 'closed', closesOn: '2026-03-31', closedOn: '2026-03-20' });
  });

  test('it is published, a submission turns out bad, and the erratum is guessed before it is looked up', async () => {
    expect(await publish(null)).toBe(1);
    const bad = (
      (await read(people.reviewer, '/v1/submissions?state=accepted&limit=200')).items as { reference: string; spool: string }[]
    ).find(({ spool }) => spool === codes.get('quay-40'))!.reference;
    const { id } = await make(people.reviewer, '/v1/proposals', { kind: 'withdrawal', submission: bad, reason: 'The grip was bent.' });
    await story.done(
      people.editor.ask('post', `/v1/submissions/${bad}/withdrawal`, { body: { proposal: id }, version: (await see(bad)).version }),
    );
    const order = (erratum: object | null) => people.editor.ask('post', '/v1/editions/2026/releases', { body: { erratum } });
    const erratum = { reasonCode: 'withdrawal', words: 'A grip was found bent.' };
    const { published } = (await make(people.editor, '/v1/editions/2026/previews', {})) as Preview;
    const expects = published.changes.flatMap(({ where, before }) => (before === null ? [] : [{ where, before }]));
    expect(new Set(published.changes.map(({ about }) => about)).size).toBeGreaterThan(1);
    await story.refused('a second revision says nothing of why', 'releases/erratum-needed', order(null), async () => {
      await story.refused(
        'an erratum expects what nobody published',
        'releases/expected-otherwise',
        order({ ...erratum, expects: [{ ...expects[0]!, before: '99' }] }),
        async () => expect(await publish({ ...erratum, expects })).toBe(2),
      );
    });
    const { body } = await story.done(story.nobody('get', '/v1/editions/2026'));
    expect(body.edition).toMatchObject({ closedOn: '2026-03-20' });
  });
}
