// Runs before `npm start` and `npm test`, on whatever Node the machine has (20.20 or newer) and with nothing installed yet:
// installs what package-lock.json names (for `npm start` without the packages for development) and, where the machine's Node is too old,
// Node itself from .config/node/. Does nothing when both are there.
import { execFileSync, spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { copyFileSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const NODE_MODULES = join(ROOT, 'node_modules');
const INSTALL_STAMP = join(NODE_MODULES, '.fairpull-installed');
/** npm reads it before package-lock.json. */
const ADDRESSED_LOCK = join(ROOT, 'npm-shrinkwrap.json');
const NODE_FOLDER = join(ROOT, '.config', 'node');
const isForStart = process.argv.includes('--for-start');
/** The oldest Node that every part of the program runs on. */
const OLDEST_NODE = [22, 15];
const TICK_MS = 10_000;
/** End of the stamp of an installation from which was left out what the start does not need. */
const LACKS_FOR_TESTS = ' for the start';

const read = (file) => (existsSync(file) ? readFileSync(file, 'utf8') : '');
const digest = (...parts) => createHash('sha256').update(parts.join('\n')).digest('hex');
const fail = (sentence) => {
  console.error(`\n${sentence}\n`);
  process.exit(1);
};

/**
 * Runs a program, and says every ten seconds that it still runs.
 * @throws Error with all that it said when it fails
 */
function run(what, command, args) {
  const startedAt = Date.now();
  const seconds = () => `${Math.round((Date.now() - startedAt) / 1000)} s`;
  console.log(`${what} …`);
  const ticker = setInterval(() => console.log(`  … ${seconds()}`), TICK_MS);
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, { cwd: ROOT, stdio: ['ignore', 'pipe', 'pipe'] });
    let output = '';
    const collect = (chunk) => (output += chunk);
    child.stdout.on('data', collect);
    child.stderr.on('data', collect);
    child.on('error', (error) => (output += error.message));
    child.on('close', (exitCode) => {
      clearInterval(ticker);
      if (exitCode !== 0) return reject(new Error(`${what} failed after ${seconds()} (exit code ${exitCode}). Its words:\n${output}`));
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
  const isMissing = ([path, { dev, optional, devOptional }]) =>
    path !== '' && !optional && !devOptional && !(isForStart && dev) && !found[path];
  const isDifferent = ([path, { version }]) => wanted[path]?.version !== version;
  return !Object.entries(wanted).some(isMissing) && !Object.entries(found).some(isDifferent);
}

async function ensureInstalled() {
  const lock = read(join(ROOT, 'package-lock.json'));
  if (lock === '') fail('package-lock.json is missing: this is not a whole checkout. Clone the repository again.');
  const [all, forStart] = [digest(lock), `${digest(lock)}${LACKS_FOR_TESTS}`];
  const stamp = read(INSTALL_STAMP);
  if (stamp === all || (isForStart && stamp === forStart)) return;
  const lacksForTests = !isForStart && stamp.endsWith(LACKS_FOR_TESTS);
  if (lacksForTests || !isInstalledByHand(lock)) {
    await installAddressed('Installing packages (npm ci), once', isForStart ? ['--omit=dev'] : [], lock);
    if (isForStart) leaveOutWhatDevelopersRead();
  }
  writeFileSync(INSTALL_STAMP, isForStart ? forStart : all);
}

function npm() {
  const program = process.env.npm_execpath;
  if (!program) fail('This program is a part of `npm start` and `npm test`; run one of these.');
  // The machine's own Node: npm ci removes the one inside node_modules first.
  return { node: process.env.npm_node_execpath ?? process.execPath, program };
}

function install(what, options) {
  const { node, program } = npm();
  return run(what, node, [program, 'ci', '--no-audit', '--no-fund', '--loglevel=error', ...options]);
}

/**
 * The lock names packages and their digests, no server; told no addresses, npm asks what versions there are of each package, which takes
 * as long as all the rest. It is told where registries have them; where one has them elsewhere it asks.
 */
async function installAddressed(what, options, lock) {
  const { node, program } = npm();
  const registry = execFileSync(node, [program, 'config', 'get', 'registry'], { cwd: ROOT, encoding: 'utf8' }).trim();
  writeFileSync(ADDRESSED_LOCK, addressed(lock, registry.replace(/\/$/, '')));
  await install(what, options).catch((error) => {
    rmSync(ADDRESSED_LOCK);
    if (!error.message.includes('E404')) throw error;
    return install(what, options);
  });
  rmSync(ADDRESSED_LOCK, { force: true });
}

function addressed(lock, registry) {
  const parsed = JSON.parse(lock);
  for (const [path, entry] of Object.entries(parsed.packages).filter(([path]) => path !== '')) {
    const name = entry.name ?? path.split('node_modules/').at(-1);
    entry.resolved = `${registry}/${name}/-/${name.split('/').at(-1)}-${entry.version}.tgz`;
  }
  return JSON.stringify(parsed);
}

/** A second compiler and its words in thirteen languages; colours for some 300 languages of programs, of which no page shows one; tests; a second form of a page's script. */
const RUNS_NOWHERE =
  /[/\\](?:lib[/\\]_tsc\.js|diagnosticMessages\.generated\.json|@shikijs[/\\]langs[/\\]dist[/\\](?!index\.).+|bintrees[/\\]test[/\\].+|swagger-ui-es-bundle.*)$/;

/** A third of what was installed runs nowhere: other databases' dialects, second forms of the same compiler of queries, libraries to link, sources, descriptions and maps for editors, and what is told of each package but its licence. */
function leaveOutWhatDevelopersRead() {
  rmSync(join(NODE_MODULES, '@types'), { recursive: true, force: true });
  const entries = existsSync(NODE_MODULES) ? readdirSync(NODE_MODULES, { recursive: true, withFileTypes: true }) : [];
  for (const { parentPath, name } of entries.filter((entry) => !entry.isDirectory())) {
    const file = join(parentPath, name);
    const isDialect =
      /[/\\]@prisma[/\\]client[/\\]runtime$/.test(parentPath) && /sqlserver|cockroachdb|mysql|sqlite|_small_|base64\.js$/.test(name);
    // Astro reads its own sources and descriptions, and the types of the client for programs are made of those of its libraries.
    const isRead = ['astro', 'openapi-'].some((name) => file.startsWith(join(NODE_MODULES, name)));
    const isForEditors = /\.(a|map|[cm]?ts)$|^(?!.*(licen[cs]e|notice)).*\.md$/i.test(name) && !isRead;
    if (isDialect || isForEditors || RUNS_NOWHERE.test(file)) rmSync(file, { force: true });
  }
}

function isNewEnough(version) {
  const [major, minor] = version.split('.').map(Number);
  return major > OLDEST_NODE[0] || (major === OLDEST_NODE[0] && minor >= OLDEST_NODE[1]);
}

const isWindows = process.platform === 'win32';
const nodeName = `node-${isWindows ? 'win' : process.platform}-${process.arch}`;
const nodePackage = join(NODE_FOLDER, 'node_modules', nodeName);
/** The Node that npm brought, and the place where npm scripts find it first. */
const nodeProgram = join(nodePackage, 'bin', isWindows ? 'node.exe' : 'node');
const pinnedNode = join(NODE_MODULES, '.bin', isWindows ? 'node.exe' : 'node');
/** The Node that runs this may be the one that npm brought, which the installation has just taken from its place. */
const isOfMachine = ![NODE_FOLDER, NODE_MODULES].some((folder) => process.execPath.startsWith(folder));
const lacksNode = () => !existsSync(pinnedNode) && !(isOfMachine && isNewEnough(process.versions.node));

/** Fetches a newer Node when the machine's own is too old for the program. */
async function fetchNode() {
  if (!lacksNode() || existsSync(nodeProgram)) return;
  await install(`Installing Node, as ${process.versions.node} of this machine is older than ${OLDEST_NODE.join('.')}`, [
    '--prefix',
    NODE_FOLDER,
  ]);
  // Headers for compiling add-ons, a third of the whole; nothing here is compiled.
  rmSync(join(nodePackage, 'include'), { recursive: true, force: true });
  if (!existsSync(nodeProgram)) {
    fail(
      `npm has no Node of its own for ${process.platform} on ${process.arch}, and this machine's is ${process.versions.node}. ` +
        `Install Node ${OLDEST_NODE.join('.')} or newer, then run the command again.`,
    );
  }
}

function layNodeOut() {
  if (!lacksNode()) return;
  mkdirSync(join(NODE_MODULES, '.bin'), { recursive: true });
  rmSync(pinnedNode, { force: true });
  if (isWindows) copyFileSync(nodeProgram, pinnedNode);
  else symlinkSync(relative(join(NODE_MODULES, '.bin'), nodeProgram), pinnedNode);
}

try {
  // One that was cut off left it.
  rmSync(ADDRESSED_LOCK, { force: true });
  await Promise.all([ensureInstalled(), fetchNode()]);
  // npm ci empties the place where it is looked for.
  await fetchNode();
  layNodeOut();
} catch (error) {
  fail(error.message);
}
