/**
 * Published documents by the server as it runs, beside a bare Fastify that serves the same bytes from memory: in turns, in one run.
 * npm run bench -- public-reads [seconds a turn, 4] [turns, 3]
 */
import autocannon from 'autocannon';
import { spawn } from 'node:child_process';
import type { ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { SERVER_OPTIONS } from '../../api/platform/start-up/server-options.js';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { createHouse, workEdition } from '../support/house.js';
import { startServer } from '../support/programs.js';
import { moveEdition } from '../support/season.js';
import { startTestServer } from '../support/test-server.js';

const [seconds = 4, turns = 3] = process.argv.slice(2).map(Number);
const CONNECTIONS = 20;
const MANY = 500;
const LOADER = ['--import', './.config/load-typescript.mjs'];
const NONE = { 'x-none': '' };

interface Case {
  readonly name: string;
  readonly path: string;
  readonly file: string;
  readonly connections: number;
  readonly asksAgain?: boolean;
}

const CASES: readonly Case[] = [
  { name: 'standings', path: '/v1/editions/2026/standings/stress', file: 'documents/standings/stress.json', connections: CONNECTIONS },
  { name: 'variant', path: '/v1/variants/gannet-20', file: 'documents/variants/gannet-20.json', connections: CONNECTIONS },
  { name: 'CSV', path: '/v1/releases/2026/1/csv/results.csv', file: 'csv/results.csv', connections: CONNECTIONS },
  {
    name: 'standings, 304',
    path: '/v1/editions/2026/standings/stress',
    file: 'documents/standings/stress.json',
    connections: CONNECTIONS,
    asksAgain: true,
  },
  { name: 'standings, many', path: '/v1/editions/2026/standings/stress', file: 'documents/standings/stress.json', connections: MANY },
];

const database = await startTestServer();
process.env['TEST_SERVER_URL'] = database.url;
const house = await createHouse();
const children: ChildProcess[] = [];
/** A clock tick of /proc, s. */
const TICK_S = 0.01;
try {
  await workEdition(house, '2026');
  await moveEdition(house.editor, '2026', 'closure');
  await house.editor.call('post', '/v1/editions/2026/releases').send({ erratum: null }).expect(202);
  await house.t.app.select(ReleasesModule).get(ReleaseWork).publishDue();
  const manifest = JSON.parse((await house.t.call('get', '/v1/releases/2026/1/manifest.json').expect(200)).text) as {
    files: { path: string; sha256: string; mediaType: string; sizeBytes: number }[];
  };
  const { digest } = (await house.t.call('get', '/v1/releases').expect(200)).body.items[0];
  const listed = (file: string) => manifest.files.find(({ path }) => path === file)!;
  const served = CASES.filter(({ name }) => ['standings', 'variant', 'CSV'].includes(name)).map(({ path, file }) => ({
    path,
    file: join(house.t.dataFolder, 'files/releases/2026/1', digest, file),
    mediaType: listed(file).mediaType,
    etag: `"${listed(file).sha256}"`,
  }));
  const [own, bare] = [await startOwn(), await startBare(served)];
  console.log(
    '| what | bytes | a second | bare | share | p50, ms | p99, ms | bare p99, ms | processor an answer, µs | bare |\n|---|---|---|---|---|---|---|---|---|---|',
  );
  for (const one of CASES) {
    const headers = one.asksAgain ? { 'if-none-match': `"${listed(one.file).sha256}"` } : NONE;
    const found: Pair[] = [];
    for (let turn = 0; turn < turns; turn += 1)
      found.push({ own: await load(own, one.path, one.connections, headers), bare: await load(bare, one.path, one.connections, headers) });
    const [middle] = found.toSorted((a, b) => shareOf(a) - shareOf(b)).slice(found.length >> 1);
    if (!middle) continue;
    const cells = [one.name, one.asksAgain ? 0 : listed(one.file).sizeBytes, middle.own.rate.toFixed(0), middle.bare.rate.toFixed(0)];
    const latency = [middle.own.p50, middle.own.p99, middle.bare.p99];
    const processor = [middle.own.cpuUs, middle.bare.cpuUs].map((us) => us.toFixed(0));
    console.log(`| ${[...cells, `${(100 * shareOf(middle)).toFixed(0)} %`, ...latency, ...processor].join(' | ')} |`);
  }
} finally {
  for (const child of children) child.kill('SIGTERM');
  await house.t.close();
  await database.stop();
}
process.exit();

interface Load {
  /** Answers a second. */
  readonly rate: number;
  readonly p50: number;
  readonly p99: number;
  /** Processor time of the server for one answer, µs: what else the machine does is not in it. */
  readonly cpuUs: number;
}

interface Pair {
  readonly own: Load;
  readonly bare: Load;
}

interface Server {
  readonly url: string;
  readonly pid: number;
}

function shareOf({ own, bare }: Pair): number {
  return own.rate / bare.rate;
}

/** Processor time that a process took so far, s. */
function cpuOf(pid: number): number {
  const fields = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ')[1]?.split(' ') ?? [];
  return (Number(fields[11]) + Number(fields[12])) * TICK_S;
}

async function load({ url, pid }: Server, path: string, connections: number, headers: Record<string, string>): Promise<Load> {
  const before = cpuOf(pid);
  const result = await autocannon({ url: url + path, connections, duration: seconds, headers });
  const isAsExpected = result.errors === 0 && result['4xx'] + result['5xx'] === 0;
  const answers = 'if-none-match' in headers ? result['3xx'] : result['2xx'];
  if (!isAsExpected || answers === 0) throw new Error(`${url}${path} did not answer as expected.`);
  return {
    rate: answers / result.duration,
    p50: result.latency.p50,
    p99: result.latency.p99,
    cpuUs: ((cpuOf(pid) - before) / answers) * 1e6,
  };
}

async function startOwn(): Promise<Server> {
  const { child, port } = await startServer(house.t, SERVER_OPTIONS);
  children.push(child);
  return { url: `http://127.0.0.1:${port}`, pid: child.pid ?? 0 };
}

async function startBare(served: readonly object[]): Promise<Server> {
  const args = [...LOADER, 'tests/benchmarks/bare-server.ts', JSON.stringify(served)];
  const child = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'inherit'] });
  children.push(child);
  const [line] = (await once(child.stdout, 'data')) as [Buffer];
  return { url: line.toString().trim(), pid: child.pid ?? 0 };
}
