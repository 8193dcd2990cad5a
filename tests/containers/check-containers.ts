/**
 * `npm run check:containers`: brings docker-compose.yml up for real, works a small season through the proxy from the first invitation to
 * the published page, scales, restarts the database, stops, and counts what failed. Ends with 0 and says so where no engine can be had.
 */
import { execFile, execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import request from 'supertest';
import type { Role } from '../../api/contract/roles.js';
import { workEdition } from '../support/house.js';
import { erratumFor, fitOutHouse, moveEdition, publish } from '../support/season.js';
import { HOUSE_STATEMENT } from '../support/state-house.js';
import { joinHouse } from '../support/test-application.js';
import type { Caller, Method } from '../support/test-application.js';
import { findEngine } from './find-engine.js';
import { Traffic } from './traffic.js';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const HERE = fileURLToPath(new URL('.', import.meta.url));
const SCRATCH = process.env['CONTAINERS_FOLDER'] ?? '/var/tmp/fairpull-containers';
const PORT = process.env['PORT'] ?? '18080';
/** How long anything may take to come about: a server that restarts beside other work on few cores took half a minute to listen. */
const PATIENCE_S = 240;
const NEVER_CHANGES = '/v1/releases/2026/1/csv/standings.csv';
const URL_OF_HOUSE = `http://127.0.0.1:${PORT}`;

type Run = (program: string, args: readonly string[]) => Promise<string>;
type Compose = (...args: string[]) => Promise<string>;

const began = Date.now();
const faults: string[] = [];
const inMb = (bytes: number): number => Math.round(bytes / 1e6);
const say = (line: string) => console.log(`${((Date.now() - began) / 1000).toFixed(0).padStart(4)} s  ${line}`);
const expectThat = (what: string, holds: boolean) => {
  say(`${holds ? 'ok     ' : 'FAILED '} ${what}`);
  if (!holds) faults.push(what);
};

const engine = findEngine(SCRATCH);
if (engine !== null) {
  await check({
    ...(process.env as Record<string, string>),
    ...engine,
    PORT,
    POSTGRES_PASSWORD: 'c0ffee',
    PROGRAM_PASSWORD: 'f00d',
    PUBLIC_URL: URL_OF_HOUSE,
    COMMIT: execFileSync('git', ['rev-parse', 'HEAD'], { cwd: ROOT, encoding: 'utf8' }).trim(),
    REQUESTS_PER_MINUTE: '1000000',
  });
  // An engine that ran before runs on.
  if (engine['STARTED_ENGINE']) process.kill(Number(engine['STARTED_ENGINE']), 'SIGTERM');
}

async function check(env: Record<string, string>): Promise<void> {
  const run: Run = async (program, args) => (await promisify(execFile)(program, [...args], { cwd: ROOT, env, maxBuffer: 1e8 })).stdout;
  const override = join(SCRATCH, 'override.yml');
  const files = ['-p', 'fairpull-check', '-f', 'docker-compose.yml', '-f', override];
  const compose: Compose = (...args) => run('docker', ['compose', ...files, ...args]);
  mkdirSync(SCRATCH, { recursive: true });
  // Only the build sees the machine's own network: where it fetches packages from may be no public address.
  const build = '{ build: { network: host } }';
  writeFileSync(override, `services:\n  migrate: ${build}\n  api: ${build}\n  worker: ${build}\n`);
  try {
    if (spawnSync('docker', ['pull', '-q', 'node:24-bookworm-slim'], { env }).status !== 0) {
      say('no image registry is reached; stand-ins of the same programs are made from Debian and npm');
      await run('bash', [join(HERE, 'images.sh'), ROOT, SCRATCH]);
    }
    await compose('down', '-v', '--timeout', '1');
    await compose('build', 'migrate');
    const bytes = Number(await run('docker', ['image', 'inspect', 'fairpull', '--format', '{{.Size}}']));
    const base = Number(await run('docker', ['image', 'inspect', 'node:24-bookworm-slim', '--format', '{{.Size}}']));
    say(`the image is built: ${inMb(bytes)} MB, ${inMb(bytes - base)} MB of it above its base`);
    await compose('up', '--detach', '--no-build', '--wait');
    say('everything is up and healthy');
    const backup = await walk(run, compose);
    await stopGracefully(run, compose);
    await comeBack(run, compose, backup);
  } catch (error) {
    faults.push((error as Error).message);
    console.error((error as Error).message);
    console.error(await compose('logs', '--tail', '20'));
  } finally {
    await compose('down', '-v', '--timeout', '1');
  }
  console.log(faults.length === 0 ? '\nThe containers hold.' : `\n${faults.length} failed:\n${faults.join('\n')}`);
  process.exitCode = faults.length === 0 ? 0 : 1;
}

/** @returns where the worker put a backup of the house at its end */
async function walk(run: Run, compose: Compose): Promise<string> {
  const call = (method: Method, path: string) => request(URL_OF_HOUSE)[method](path);
  const invitation = await compose('exec', '-T', 'api', 'node', 'api/invite-first-admin.js');
  const admin = await enter(call, secretIn(invitation), 'admin');
  const invited = async (role: Role): Promise<Caller> => {
    const { body } = await admin
      .browse('post', '/v1/invitations')
      .send({ roles: [role], note: 'check' })
      .expect(201);
    return enter(call, secretIn(JSON.stringify(body)), role);
  };
  const [editor, reviewer, tester] = [await invited('editor'), await invited('reviewer'), await invited('tester')];
  const codes = await fitOutHouse(editor);
  await workEdition({ editor, reviewer, tester, codes }, '2026');
  const plan = await editor.call('get', '/v1/editions/2026/plan?category=knot');
  expectThat('more tests are planned in a thread of the image', plan.status === 200);
  await moveEdition(editor, '2026', 'closure');
  await editor.call('post', '/v1/house-statement').send(HOUSE_STATEMENT).expect(201);
  expectThat('a season is worked through the proxy, handed in, reviewed, published', (await publish(editor, '2026')) === 1);
  await untilShown('/editions/2026/', 'gannet-20');
  expectThat('its page is shown through the proxy', true);
  const compiled = await compose('exec', '-T', 'worker', 'find', '/data/site', '-maxdepth', '2', '-path', '*/programs/*');
  expectThat('no compiler ran for it: the image brings what renders the site', compiled === '');

  for (const [file, type] of [
    ['fairpull.mjs', 'text/javascript; charset=utf-8'],
    ['fairpull.d.mts', 'text/plain; charset=utf-8'],
  ] as const) {
    const { ok, headers } = await fetch(`${URL_OF_HOUSE}/client/${file}`);
    const isOpen = headers.get('access-control-allow-origin') === '*' && headers.get('content-type') === type;
    expectThat(`/client/${file} lies in the site, for any page`, ok && isOpen);
  }

  const paths = ['/', '/editions/2026/', '/v1/editions', '/v1/editions/2026', NEVER_CHANGES, '/health/live'];
  const traffic = new Traffic(URL_OF_HOUSE, () => paths);
  traffic.start();
  try {
    await goThrough(run, compose, traffic, editor);
  } finally {
    await traffic.stop();
  }
  expectThat(
    'the record took another entry after all that',
    (await editor.call('post', '/v1/catalogue/makers').send({ slug: 'after', name: 'After' })).status === 201,
  );
  const backup = await compose('exec', '-T', 'worker', 'node', 'api/backup-command.js', 'backup', '/data/backups');
  const made = /The backup is in (\S+)\./.exec(backup)?.[1] ?? '';
  const drilled = ['node', 'api/backup-command.js', 'check', made, '--drill'];
  const seen = await compose('run', '--rm', '-T', '-e', 'TMPDIR=/data/backups', 'migrate', ...drilled);
  const isWhole = seen.includes('3 releases verified') && seen.includes('Every part is as it was written.');
  expectThat('a backup is made in the container, reads well, and comes back whole in a drill', isWhole);
  await compose('exec', '-T', 'worker', 'bash', '-c', 'rm /data/files/releases/2026/1/*/documents/edition.json');
  const rebuilt = await compose('exec', '-T', 'worker', 'node', 'api/rebuild-files-command.js');
  expectThat('a file that is lost is made again', rebuilt.includes('2026/1: 1 files made again, as they were signed.'));
  await compose('stop', 'api');
  expectThat('without a server the proxy still gives out what never changes', (await fetch(URL_OF_HOUSE + NEVER_CHANGES)).ok);
  return made;
}

/** What an operator does to a house that is read all the while. */
async function goThrough(run: Run, compose: Compose, traffic: Traffic, editor: Caller): Promise<void> {
  const counted = async (what: string, work: () => Promise<unknown>) => {
    const { asked, failures } = await traffic.during(work);
    expectThat(
      `${what}: ${failures.length} of ${asked} requests failed${failures.length > 0 ? ` (${[...new Set(failures)].slice(0, 4).join('; ')})` : ''}`,
      failures.length === 0,
    );
  };
  const scaled = (api: number, worker: number) =>
    compose('up', '--detach', '--no-build', '--no-recreate', '--wait', '--scale', `api=${api}`, '--scale', `worker=${worker}`);
  await counted('to two servers and two workers', () => scaled(2, 2));
  const correct = async (words: string) => {
    await publish(editor, '2026', await erratumFor(editor, '2026', 'catalogueError', words));
    await untilShown('/editions/2026/', words);
  };
  await counted('a correction by one of two workers', () => correct('A name was misread.'));
  await counted('servers restarted one after the other, again and again', () => restartInTurn(run, compose, traffic));
  await counted('the database restarts', async () => {
    await compose('restart', 'db');
    await untilReady();
  });
  await counted('a correction by a worker whose database had gone', () => correct('Another was, too.'));
  await counted('back to one server and one worker', () => scaled(1, 1));
}

/** Until so many requests were answered meanwhile as show what a restart costs; a restarted one is healthy before the next goes. */
async function restartInTurn(run: Run, compose: Compose, traffic: Traffic): Promise<void> {
  const until20k = traffic.count + 20_000;
  const ids = (await compose('ps', '-q', 'api')).trim().split('\n');
  for (let turn = 0; traffic.count < until20k; turn += 1) {
    const id = ids[turn % ids.length] ?? '';
    await run('docker', ['restart', '--time', '30', id]);
    await until(
      `${id} is healthy`,
      async () => (await run('docker', ['inspect', id, '--format', '{{.State.Health.Status}}'])).trim() === 'healthy',
    );
  }
}

function enter(call: (method: Method, path: string) => ReturnType<Caller['call']>, secret: string, role: Role): Promise<Caller> {
  return joinHouse(call, secret, { email: `${role}@bench.example`, displayName: `The ${role}` }, [role]);
}

function secretIn(text: string): string {
  const secret = /invitation\/#([\w-]+)/.exec(text)?.[1];
  if (secret === undefined) throw new Error(`No invitation is found in: ${text}`);
  return secret;
}

async function untilShown(path: string, words: string): Promise<void> {
  await until(`${path} shows "${words}"`, async () => (await (await fetch(URL_OF_HOUSE + path)).text()).includes(words));
}

function untilReady(): Promise<void> {
  return until('the server is ready', async () => (await fetch(`${URL_OF_HOUSE}/health/ready`)).ok);
}

async function until(what: string, holds: () => Promise<boolean>): Promise<void> {
  for (const end = Date.now() + 1000 * PATIENCE_S; Date.now() < end;) {
    if (await holds().catch(() => false)) return;
    await new Promise((resume) => setTimeout(resume, 200));
  }
  throw new Error(`Waited ${PATIENCE_S} s in vain until ${what}.`);
}

/** Nobody is killed: each ends by itself, in time, with the code of a program that was asked to end. */
async function stopGracefully(run: Run, compose: Compose): Promise<void> {
  await compose('stop');
  const names = (await compose('ps', '--all', '--format', '{{.Name}}')).trim().split('\n');
  const codes: (readonly [string, string])[] = [];
  for (const name of names) codes.push([name, (await run('docker', ['inspect', name, '--format', '{{.State.ExitCode}}'])).trim()]);
  expectThat(
    `all stop when asked: ${codes.map(([name, code]) => `${name.replace('fairpull-check-', '')} ${code}`).join(', ')}`,
    codes.every(([, code]) => code !== '137'),
  );
}

/** Everything is lost but the backups. */
async function comeBack(run: Run, compose: Compose, backup: string): Promise<void> {
  await compose('down');
  for (const volume of ['database', 'files', 'site', 'keys']) await run('docker', ['volume', 'rm', `fairpull-check_${volume}`]);
  await compose('run', '--rm', '-T', 'migrate', 'node', 'api/backup-command.js', 'restore', backup);
  await compose('up', '--detach', '--no-build', '--wait');
  await untilShown('/editions/2026/', 'Another was, too.');
  const { items } = (await (await fetch(`${URL_OF_HOUSE}/v1/releases`)).json()) as { items: unknown[] };
  expectThat('a house that lost everything but its backups comes back from one', items.length === 3);
}
