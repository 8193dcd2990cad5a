import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { startMailServer } from '../support/mail-server.js';
import type { MailServer } from '../support/mail-server.js';
import { createTestApplication } from '../support/test-application.js';
import type { Caller, TestApplication } from '../support/test-application.js';

let mail: MailServer;
let t: TestApplication;
let admin: Caller;
beforeAll(async () => {
  mail = await startMailServer();
  t = await createTestApplication({ SMTP_URL: mail.url, MAIL_FROM: 'house@bench.example', LOG_LEVEL: 'silent' });
  admin = await t.caller(['admin']);
});
afterAll(async () => {
  await t.close();
  await mail.close();
});

const NEW = 'a password of afterwards';
const secretIn = (text: string): string => /#(\S+)/.exec(text)?.[1] ?? '';

test('an invitation with an address is mailed, one without is handed over', async () => {
  const invite = (body: object) => admin.call('post', '/v1/invitations').send({ roles: ['tester'], note: 'a tester', ...body });
  const { body } = await invite({ email: 'new@bench.example' }).expect(201);
  expect(body.isMailed).toBe(true);
  const letter = await mail.letter();
  expect(letter).toContain('To: new@bench.example');
  expect(secretIn(letter)).toBe(body.secret);
  expect((await invite({}).expect(201)).body.isMailed).toBe(false);
});

test('who has forgotten a password has an address mailed, which serves; a stranger hears the same and gets none', async () => {
  const tester = await t.caller(['tester']);
  const ask = (email: string) => t.call('post', '/v1/password-resets').send({ email });
  const before = mail.taken;
  const strange = await ask('nobody@bench.example').expect(204);
  const known = await ask(tester.email).expect(204);
  expect(known.text).toBe(strange.text);
  const secret = secretIn(await mail.letter());
  expect(mail.taken).toBe(before + 1);
  await t.call('post', `/v1/password-resets/${secret}/password`).send({ password: NEW }).expect(204);
  await t.call('post', '/v1/sessions').send({ email: tester.email, password: NEW }).expect(201);
});

test('letters to one address are counted', async () => {
  const statuses = [];
  for (let i = 0; i < 7; i++) statuses.push((await t.call('post', '/v1/password-resets').send({ email: 'often@bench.example' })).status);
  expect(statuses).toEqual([204, 204, 204, 204, 204, 429, 429]);
});

test('an admin whose mail server is down hands the address over', async () => {
  const tester = await t.caller(['tester']);
  await mail.close();
  const { body } = await admin.browse('post', `/v1/accounts/${tester.accountId}/password-resets`).expect(201);
  expect(body).toMatchObject({ isMailed: false, address: expect.stringContaining('/desk/new-password/#') });
});

test('a lost admin is let in from the machine of the house; anybody else is told who the admins are', async () => {
  const run = (email: string) =>
    promisify(execFile)(process.execPath, ['--import', './.config/load-typescript.mjs', 'api/let-admin-in.ts', email], {
      env: { ...process.env, DATABASE_URL: t.databaseUrl, DATA_FOLDER: t.dataFolder, SMTP_URL: '' },
    });
  const { stdout } = await run(admin.email.toUpperCase());
  await t
    .call('post', `/v1/password-resets/${secretIn(stdout)}/password`)
    .send({ password: NEW })
    .expect(204);
  await t.call('post', '/v1/sessions').send({ email: admin.email, password: NEW }).expect(201);
  await expect(run('somebody@bench.example')).rejects.toMatchObject({ code: 1, stderr: expect.stringContaining(admin.email) });
});
