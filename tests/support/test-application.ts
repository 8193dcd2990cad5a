import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { mkdir, mkdtemp, rm, symlink } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import request from 'supertest';
import type { Test } from 'supertest';
import { AccountsModule } from '../../api/accounts/accounts.module.js';
import { Invite } from '../../api/accounts/invite.js';
import { readConfig } from '../../api/config.js';
import { createApp } from '../../api/create-app.js';
import { Clock } from '../../api/platform/clock/clock.js';
import type { Role } from '../../api/contract/roles.js';
import { Identifiers } from '../../api/platform/identifiers/identifiers.js';
import { PROGRAMS_OF_RUN } from './build-site.js';
import { noting } from './note-exchanges.js';
import { stateHouse } from './state-house.js';
import { createTestDatabase } from './test-database.js';

export type Method = 'get' | 'post' | 'put' | 'patch' | 'delete';

/** A clock that a test sets. */
export class SetClock extends Clock {
  constructor(public time: Date = new Date('2026-03-15T12:00:00Z')) {
    super();
  }

  override now(): Date {
    return new Date(this.time);
  }
}

/** Somebody who calls the API with a bearer token. */
export interface Caller {
  readonly accountId: string;
  readonly token: string;
  readonly email: string;
  call(method: Method, path: string): Test;
  /** The same by the session of a browser. */
  browse(method: Method, path: string): Test;
}

export interface TestApplication {
  readonly app: NestFastifyApplication;
  readonly clock: SetClock;
  /** Of the owner; the application itself has a lesser role. */
  readonly databaseUrl: string;
  readonly dataFolder: string;
  /** A call without credentials. */
  call(method: Method, path: string): Test;
  /** A new account with these roles and a token for all of them. */
  caller(roles: readonly Role[], displayName?: string): Promise<Caller>;
  close(): Promise<void>;
}

export const PASSWORD = 'a long enough password';

/** Accepts an invitation, signs in and makes a token for all of the roles. */
export async function joinHouse(
  call: (method: Method, path: string) => Test,
  secret: string,
  person: { readonly email: string; readonly displayName: string },
  roles: readonly Role[],
): Promise<Caller> {
  const account = await call('post', `/v1/invitations/${secret}/acceptance`)
    .send({ ...person, password: PASSWORD })
    .expect(201);
  return signIn(call, { accountId: account.body.id as string, email: person.email }, PASSWORD, roles);
}

/** Opens a session and makes a token for all of the roles. */
export async function signIn(
  call: (method: Method, path: string) => Test,
  { accountId, email }: { readonly accountId: string; readonly email: string },
  password: string,
  roles: readonly Role[],
): Promise<Caller> {
  const session = await call('post', '/v1/sessions').send({ email, password }).expect(201);
  const browse = (method: Method, path: string) =>
    call(method, path)
      .set('Cookie', session.get('Set-Cookie') ?? [])
      .set('X-CSRF-Token', session.body.csrfToken);
  const issued = await browse('post', '/v1/tokens').send({ name: 'test', scopes: roles, expiresInDays: 366 }).expect(201);
  const token = issued.body.token as string;
  return {
    accountId,
    token,
    email,
    call: (method, path) => call(method, path).set('Authorization', `Bearer ${token}`),
    browse,
  };
}

/** What one house has compiled is there for the next. */
async function shareCompiledSites(dataFolder: string): Promise<void> {
  const programs = join(PROGRAMS_OF_RUN, 'site/programs');
  for (const folder of [programs, join(dataFolder, 'site')]) await mkdir(folder, { recursive: true });
  await symlink(programs, join(dataFolder, 'site/programs'), 'junction');
}

/** The real application on a database of its own; nothing of it is replaced but the clock. @param isStated whether the house has said who it is */
export async function createTestApplication(
  env: Record<string, string> = {},
  identifiers = new Identifiers(),
  isStated = true,
): Promise<TestApplication> {
  const database = await createTestDatabase();
  if (isStated) await stateHouse(database.url);
  const dataFolder = await mkdtemp(join(tmpdir(), 'fairpull-test-'));
  await shareCompiledSites(dataFolder);
  const clock = new SetClock();
  const config = readConfig({
    DATABASE_URL: database.programUrl,
    DATA_FOLDER: dataFolder,
    LOG_LEVEL: 'error',
    REQUESTS_PER_MINUTE: '1000000',
    ...env,
  });
  const app = await createApp({ config, clock, identifiers });
  const call = (method: Method, path: string) => noting(method, path, request(app.getHttpServer())[method](path));
  let made = 0;

  const caller = async (roles: readonly Role[], displayName?: string): Promise<Caller> => {
    made += 1;
    const email = `person-${made}@bench.example`;
    const { secret } = await app
      .select(AccountsModule)
      .get(Invite)
      .run(null, { roles: [...roles], note: 'test' });
    return joinHouse(call, secret, { email, displayName: displayName ?? `Person ${made}` }, roles);
  };

  const close = async (): Promise<void> => {
    await app.close();
    await database.drop();
    await rm(dataFolder, { recursive: true, force: true });
  };
  return { app, clock, databaseUrl: database.url, dataFolder, call, caller, close };
}
