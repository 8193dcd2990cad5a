// Runs before `npm start` and `npm test`, on whatever Node the machine has (20.20 or newer) and with nothing installed yet:
// installs what package-lock.json names, then generates the database client from the schema. Does nothing when both are current.
import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const NODE_MODULES = join(ROOT, 'node_modules');
const GENERATED = join(ROOT, 'api', 'platform', 'database', 'generated');
const INSTALL_STAMP = join(NODE_MODULES, '.fairpull-installed');
const GENERATE_STAMP = join(NODE_MODULES, '.fairpull-generated');
/** What the program needs where npm has no Node of ours for the platform (macOS, rarer processors). */
const OLDEST_NODE = [22, 12];
const TICK_MS = 10_000;

const read = (file) => (existsSync(file) ? readFileSync(file, 'utf8') : '');
const digest = (...parts) => createHash('sha256').update(parts.join('\n')).digest('hex');
const fail = (sentence) => {
  console.error(`\n${sentence}\n`);
  process.exit(1);
};

/** Runs a program with its output shown, and says every ten seconds that it still runs. */
function run(what, command, args, env = {}) {
  const startedAt = Date.now();
  const seconds = () => `${Math.round((Date.now() - startedAt) / 1000)} s`;
  console.log(`${what} …`);
  const ticker = setInterval(() => console.log(`  … ${seconds()}`), TICK_MS);
  return new Promise((resolve) => {
    const child = spawn(command, args, { cwd: ROOT, env: { ...process.env, ...env }, stdio: ['ignore', 'pipe', 'pipe'] });
    let output = '';
    const collect = (chunk) => (output += chunk);
    child.stdout.on('data', collect);
    child.stderr.on('data', collect);
    child.on('error', (error) => (output += error.message));
    child.on('close', (exitCode) => {
      clearInterval(ticker);
      if (exitCode !== 0) fail(`${what} failed after ${seconds()} (exit code ${exitCode}). Its words:\n${output}`);
      console.log(`  done in ${seconds()}`);
      resolve();
    });
  });
}

/** Whether node_modules holds what the lock names: also true after an install by hand, which leaves no stamp of ours. */
function isInstalledByHand(lock) {
  const written = read(join(NODE_MODULES, '.package-lock.json'));
  if (written === '') return false;
  const wanted = JSON.parse(lock).packages;
  const found = JSON.parse(written).packages;
  const isMissing = ([path, { optional, devOptional }]) => path !== '' && !optional && !devOptional && !found[path];
  const isDifferent = ([path, { version }]) => wanted[path]?.version !== version;
  return !Object.entries(wanted).some(isMissing) && !Object.entries(found).some(isDifferent);
}

async function ensureInstalled() {
  const lock = read(join(ROOT, 'package-lock.json'));
  if (lock === '') fail('package-lock.json is missing: this is not a whole checkout. Clone the repository again.');
  const wanted = digest(lock);
  if (read(INSTALL_STAMP) === wanted) return;
  if (!isInstalledByHand(lock)) {
    const npm = process.env.npm_execpath;
    if (!npm) fail('This program is a part of `npm start` and `npm test`; run one of these.');
    // The machine's own Node: npm ci removes the one inside node_modules first.
    const node = process.env.npm_node_execpath ?? process.execPath;
    await run('Installing packages (npm ci), once', node, [npm, 'ci', '--no-audit', '--no-fund', '--loglevel=error']);
  }
  writeFileSync(INSTALL_STAMP, wanted);
}

/** Node for our programs: the one that npm installed beside them, else the machine's own. */
function findNode() {
  const pinned = join(NODE_MODULES, '.bin', process.platform === 'win32' ? 'node.cmd' : 'node');
  if (existsSync(pinned)) return pinned;
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major < OLDEST_NODE[0] || (major === OLDEST_NODE[0] && minor < OLDEST_NODE[1])) {
    fail(
      `npm has no Node of its own for ${process.platform} on ${process.arch}, and this machine's is ${process.versions.node}. ` +
        `Install Node ${OLDEST_NODE.join('.')} or newer, then run the command again.`,
    );
  }
  return process.execPath;
}

function readSchema(folder = join(ROOT, 'prisma')) {
  const entries = readdirSync(folder, { withFileTypes: true }).sort((one, other) => one.name.localeCompare(other.name));
  return entries.flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return readSchema(path);
    return entry.name.endsWith('.prisma') ? [entry.name, read(path)] : [];
  });
}

async function ensureGenerated() {
  const node = findNode();
  const prisma = join(NODE_MODULES, 'prisma');
  const wanted = digest(...readSchema(), read(join(ROOT, '.config', 'prisma.ts')), read(join(prisma, 'package.json')));
  if (existsSync(GENERATED) && read(GENERATE_STAMP) === wanted) return;
  const args = [join(prisma, 'build', 'index.js'), 'generate', '--config', join(ROOT, '.config', 'prisma.ts')];
  // Generating needs no schema engine; naming any program keeps Prisma from downloading its own. For this one call only.
  const env = { PRISMA_SCHEMA_ENGINE_BINARY: process.execPath, CHECKPOINT_DISABLE: '1', PRISMA_HIDE_UPDATE_MESSAGE: '1' };
  await run('Generating the database client', node, args, env);
  writeFileSync(GENERATE_STAMP, wanted);
}

await ensureInstalled();
await ensureGenerated();
