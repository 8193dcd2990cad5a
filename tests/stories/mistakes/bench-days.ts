/** The second chapter: the edition is planned and opened, and pulled for. */
import { pulls } from '../../support/bench.js';
import { csvFile } from '../../support/hand-in-csv.js';
import { FORCE_SCHEME } from '../../support/season.js';
import {
  BOARD,
  change,
  codes,
  content,
  day,
  EDITION,
  handedIn,
  handIn,
  make,
  people,
  read,
  reference,
  rowsOf,
  see,
  sendFile,
  SLUGS,
  step,
  story,
  versionOf,
} from './world.js';

const amend = (body: object) => change(people.editor, '/v1/editions/2026/amendments', body, EDITION, 'post');

const controlPull = (benchDay: string, forces: readonly number[], more: object = {}) => ({
  controlLine: 'C1',
  instrument: 'gauge-1',
  method: 'straight-pull',
  benchDay,
  readings: forces.map((value) => ({ text: value.toFixed(2), unit: 'N' })),
  ...more,
});

export function benchDays(): void {
  test('the edition is planned wrongly, and opened too early', async () => {
    const plan = { slug: '2026', name: 'Winter', scheme: { slug: FORCE_SCHEME.slug, number: 1 }, previous: null };
    const methods = [{ slug: 'straight-pull', number: 1 }];
    const planned = (body: object) =>
      people.editor.ask('post', '/v1/editions', { body: { ...plan, methods, opensOn: '2026-01-10', ...body } });
    await story.refused('an edition closes before it opens', 'request/not-valid', planned({ closesOn: '2025-03-31' }), () =>
      story.done(planned({ closesOn: '2026-02-28' })),
    );
    await story.corrected('an edition is planned twice', async () => {
      await story.done(planned({ slug: 'winter-2026', closesOn: '2026-02-28' }));
      await story.done(people.editor.ask('delete', '/v1/editions/winter-2026', { version: 1 }));
    });
    await story.corrected('the name and the days of a plan are wrong', () =>
      change(people.editor, '/v1/editions/2026', { name: 'Winter trials', opensOn: '2026-01-08' }, EDITION),
    );
    await story.refused('it is opened without entries', 'editions/nothing-to-open', step('opening'), async (told) => {
      expect((await read(people.editor, BOARD)).standsInTheWay).toHaveLength(told.errors!.length);
      await make(people.editor, '/v1/editions/2026/entries', { variants: ['quay-20', 'quay-40'] });
      await story.done(
        people.editor.ask('delete', '/v1/editions/2026/entries/quay-40', { version: await versionOf(people.editor, EDITION) }),
      );
      await make(people.editor, '/v1/editions/2026/entries', { variants: ['quay-30'] });
      await story.done(step('opening'));
    });
    await story.refused(
      'an entry is missing when it is open already',
      'editions/wrong-state',
      people.editor.ask('post', '/v1/editions/2026/entries', { body: { variants: ['quay-40'] } }),
      () => amend({ variants: ['quay-40'], reason: 'It came late.' }),
    );
    await story.corrected('a method was forgotten', () =>
      amend({ methods: [{ slug: 'diameter', number: 1 }], reason: 'It was forgotten.' }),
    );
    await story.refused(
      'the closing day is too early',
      'editions/wrong-state',
      people.editor.ask('patch', '/v1/editions/2026', {
        body: { closesOn: '2026-03-31' },
        version: await versionOf(people.editor, EDITION),
      }),
      () => amend({ closesOn: '2026-03-31', reason: 'A rig was down.' }),
    );
  });

  test('the control line is pulled on the wrong days, and twice', async () => {
    day('2026-01-19');
    const send = (body: object) => people.tester.ask('post', '/v1/control-pulls', { body });
    for (let i = 9; i < 19; i++)
      await story.done(send(controlPull(`2026-01-${String(i).padStart(2, '0')}`, [84 + (i % 2), 84.2 + (i % 2)])));
    expect((await read(people.tester, '/v1/rigs')).items).toContainEqual(
      expect.objectContaining({ instrument: 'gauge-1', state: 'learning' }),
    );
    const last = controlPull('2026-01-19', [84.4, 84.8]);
    await story.corrected('a control pull bears the day of last week', async () => {
      const { body } = await story.done(send({ ...last, benchDay: '2026-01-12' }));
      expect((body as { strike: { reason: string } }).strike.reason).toMatch(/judges nothing/);
      await story.done(send(last));
    });
    await story.refused('the same control pull is sent again', 'control-pulls/handed-in-before', send(last), async (told) => {
      expect(told.detail).toMatch(/[0-9a-f]{8}-/);
      await story.done(send({ ...last, note: 'Pulled once more at noon.' }));
    });
    const { id } = (await story.done(send(controlPull('2026-01-19', [8.44, 8.48], { note: 'A comma slipped.' })))).body as { id: string };
    await story.corrected('a comma slips in a control pull', () =>
      make(people.reviewer, `/v1/control-pulls/${id}/strike`, { reason: 'A comma slipped.' }),
    );
  });

  test('a bench day is handed in by file, with everything that spreadsheets do to one', async () => {
    const good = rowsOf('quay-20', 1);
    const file = csvFile(good);
    const look = (body: string) => sendFile(people.tester, body, '/v1/submissions/preview');
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
    for (const [mistake, code, body] of slips)
      await story.refused(mistake, code, sendFile(people.tester, body), () => story.done(look(file)));
    for (const [mistake, body] of [
      ['tabs', file.replaceAll(',', '\t')],
      ['semicolons, told by sep=', `sep=;\r\n${file.replaceAll(',', ';')}`],
    ] as const)
      await story.corrected(mistake, () => story.done(look(body)));
    const first = (await handedIn(people.tester, file))[0]!.reference;
    await story.refused('the same file is handed in again', 'handed_in_before', sendFile(people.tester, file), async (told) => {
      expect(told.errors![0]!.detail).toContain(first);
      await read(people.tester, `/v1/submissions/${first}`);
    });
  });

  test('a whole day was read in kgf and written down as lbf: the answer names the factor, and it is taken back', async () => {
    const day19 = (unit: string) => csvFile(SLUGS.flatMap((slug) => rowsOf(slug, 3, { unit, per: 9.80665, instrument: 'R2' })));
    const wrong = await handedIn(people.tester, day19('lbf'));
    expect(wrong.flatMap(({ findings }) => findings.map(({ message }) => message)).join(' ')).toContain(
      'by a factor near 0.4536 (kilograms and pounds (kgf, lbf))',
    );
    await story.corrected('kgf is written down as lbf', async () => {
      for (const { reference } of wrong)
        await story.done(people.tester.ask('post', `/v1/submissions/${reference}/taking-back`, { version: 1 }));
      await handedIn(people.tester, day19('kgf'));
    });
  });

  test('a draft is begun with two fields, a day goes badly, and bench days lie before the edition and the spool', async () => {
    const { edition, spool, method, methodVersion, benchDay } = content('quay-30', 139);
    const begun = await make(people.tester, '/v1/drafts', { content: { spool, method } });
    const at = `/v1/submissions/${begun.reference}/revisions`;
    const whole = content('quay-30', 139);
    await story.refused(
      'a draft is handed in before it is whole',
      'request/not-valid',
      people.tester.ask('post', at, { body: { edition, spool, method, methodVersion, benchDay }, version: 1 }),
      () => story.done(people.tester.ask('post', at, { body: whole, version: 1 })),
    );
    const bad = content('quay-40', 175, {
      specimens: pulls(175).map((specimen, i) => (i < 7 ? { ...specimen, validity: 'invalid', invalidReason: 'slipped' } : specimen)),
    });
    await story.refused('seven of ten specimens slip', 'submissions/blocked', handIn(people.tester, bad), () =>
      reference(people.tester, { ...bad, fewerBecause: 'The grip slipped until its jaws were cleaned.' }),
    );
    const early = { ...content('quay-40', 173), benchDay: '2026-01-06' };
    const { body } = await story.done(handIn(people.tester, early));
    expect((body.findings as { code: string }[]).map(({ code }) => code)).toContain('date/before-the-edition');
    const takeBack = (name: string) => story.done(people.tester.ask('post', `/v1/submissions/${name}/taking-back`, { version: 1 }));
    await story.corrected('a bench day before the edition opened', () => takeBack(body.reference));
    // When a spool was obtained may tell what it is: the reviewer alone is told.
    const beforeSpool = (await story.done(handIn(people.tester, { ...content('quay-20', 93), benchDay: '2026-01-09' }))).body;
    expect(JSON.stringify(beforeSpool)).not.toContain('before-its-time');
    expect((await see(beforeSpool.reference)).findings.map(({ code }) => code)).toContain('date/before-its-time');
    await story.corrected('a bench day before the spool was there', () => takeBack(beforeSpool.reference));
  });
}
