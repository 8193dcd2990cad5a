/**
 * `npm start`: everything that the program needs, in one command, on a machine with nothing prepared.
 * Database → migrations → signing key → server and desk → worker → on the first run the demo, or with `--empty` an invitation.
 */
import { demoAccounts } from '../prisma/seed/demo-accounts.js';
import { HOUSE } from '../prisma/seed/house/house-name.js';
import { buildDesk } from './build-desk.js';
import { readConfig } from './config.js';
import { applyMigrations } from './platform/migrations/apply-migrations.js';
import { letProgramIn } from './platform/migrations/grant-program.js';
import { ClosingList } from './platform/start-up/closing-list.js';
import { onEnd } from './platform/start-up/end-signals.js';
import { loadWithMark, readContents, removeHalfDemo, wasDemoCutOff } from './first-run.js';
import { launchServer, withAddresses } from './platform/start-up/launch-server.js';
import type { RunningServer } from './platform/start-up/launch-server.js';
import { openDatabase } from './platform/start-up/open-database.js';
import { runProgram, startProgram } from './platform/start-up/program.js';
import type { Program } from './platform/start-up/program.js';
import { say, step } from './platform/start-up/progress.js';
import { SERVER_OPTIONS } from './platform/start-up/server-options.js';
import { ensureSigningKey } from './platform/start-up/ensure-signing-key.js';
import { compiledSite } from './releases/site/site-program.js';
import { readStartOptions } from './platform/start-up/start-options.js';
import type { StartOptions } from './platform/start-up/start-options.js';
import { waitUntilSiteIsBuilt } from './platform/start-up/wait-until-ready.js';

type Environment = Readonly<Record<string, string>>;

const closing = new ClosingList();

async function end(exitCode: number): Promise<never> {
  await closing.closeAll();
  process.exit(exitCode);
}

async function start(options: StartOptions): Promise<void> {
  const { ownerUrl, programUrl: databaseUrl } = await openDatabase(options, closing);
  await prepareDatabase(options, ownerUrl);
  await letProgramIn(ownerUrl, databaseUrl);

  const contents = await readContents(
    databaseUrl,
    demoAccounts.map(({ email }) => email),
  );
  const isFirstRun = contents.isUnused;
  // A house that has published and lost its key is told so, and gets none by itself.
  if (isFirstRun) await ensureSigningKey(options.dataFolder);
  const isDemo = contents.isDemo || (isFirstRun && options.wantsDemo);
  const house = isDemo ? { HOUSE_NAME: HOUSE } : {};
  const env = { DATABASE_URL: databaseUrl, DATA_FOLDER: options.dataFolder, IS_DEMO: String(isDemo), ...house };

  // What renders the site is compiled meanwhile. Why it could not be says who builds the site.
  const compiled = compileSites(env).catch(() => undefined);
  const server = await step('Starting the server', () => launchBesideDesk(options, env));
  endWith(server.program);
  // The demo publishes its seasons itself, on their own dates; a worker beside it would date them today. It lays rows as their owner.
  if (isFirstRun && isDemo) await loadDemo(options, { ...env, DATABASE_OWNER_URL: ownerUrl }, server);
  await compiled;
  endWith(startProgram(closing, 'The worker', 'api/worker.ts', withAddresses(env, server.url)));
  const isBuilt = await step('Building the site', () => waitUntilSiteIsBuilt(server.url));
  if (!isBuilt) say('The site is not built yet. Where a line above says why, do what it says; else its pages appear when that is done.');
  say(welcome(server.url, isDemo));
  if (isFirstRun && !isDemo) await inviteFirstAdmin(env, server);
}

async function prepareDatabase(options: StartOptions, databaseUrl: string): Promise<void> {
  if (wasDemoCutOff(options.dataFolder)) {
    if (options.databaseUrl !== undefined) {
      throw new Error(
        `Loading the demo was cut off, and the database that DATABASE_URL names holds half of it. Empty that database and ${options.dataFolder}, then start again.`,
      );
    }
    say('Loading the demo was cut off last time; it begins anew.');
    await removeHalfDemo(databaseUrl, options.dataFolder);
  }
  await step('Bringing the database up to date', () => applyMigrations(databaseUrl));
}

/** The desk is built meanwhile; when one fails the other is waited for, so that nothing stays behind. */
async function launchBesideDesk(options: StartOptions, env: Environment): Promise<RunningServer> {
  const desk = buildDesk(options.dataFolder, process.env['PATH'] ?? '');
  const [server, built] = await Promise.allSettled([launchServer(options, env, closing), desk]);
  if (server.status === 'rejected') throw server.reason;
  if (built.status === 'rejected') throw built.reason;
  return server.value;
}

/** When the server or the worker ends by itself, the rest ends too: half a program helps nobody. */
function endWith(...programs: readonly Program[]): void {
  for (const program of programs) {
    void program.ended.then((exitCode) => {
      if (closing.isClosing()) return;
      console.error(`${program.name} ended by itself (exit code ${String(exitCode)}); stopping the rest.`);
      return end(1);
    });
  }
}

async function compileSites(env: Environment): Promise<void> {
  const config = readConfig({ ...process.env, ...env });
  for (const language of config.SITE_LANGUAGES) await compiledSite(config, language);
}

async function loadDemo(options: StartOptions, env: Environment, server: RunningServer): Promise<void> {
  say(`The server answers at ${server.url}/ — loading the demo into it, once:`);
  await loadWithMark(options.dataFolder, async () => {
    // A server of its own runs in it. It builds the site as well: what it would take to load the program once more is saved.
    const told = { ...withAddresses(env, server.url), WITH_SITE: 'true' };
    await runProgram(startProgram(closing, 'The demo loader', 'prisma/seed/load-demo.ts', told, SERVER_OPTIONS));
  });
}

async function inviteFirstAdmin(env: Environment, server: RunningServer): Promise<void> {
  say('The first admin makes an account at this address; it works once:');
  await runProgram(startProgram(closing, 'The invitation', 'api/invite-first-admin.ts', withAddresses(env, server.url)));
}

function welcome(url: string, isDemo: boolean): string {
  const lines = ['', 'Fairpull is ready. Ctrl-C stops it.', '', `  site  ${url}/`, `  desk  ${url}/desk/`, `  API   ${url}/docs`, ''];
  if (!isDemo) return lines.join('\n');
  const width = Math.max(...demoAccounts.map(({ email }) => email.length));
  const accounts = demoAccounts.map(({ email, password, roles }) => `  ${email.padEnd(width)}  ${password}  ${roles.join(', ')}`);
  return [...lines, 'Everything in the demo is invented. Its accounts (e-mail, password, roles):', ...accounts, ''].join('\n');
}

onEnd((reason) => {
  say(`\nStopping (${reason}) …`);
  void end(0);
});
try {
  await start(readStartOptions(process.argv.slice(2), process.env));
} catch (error) {
  if (!closing.isClosing()) {
    console.error(`\nFairpull could not start. ${(error as Error).message}\n`);
    await end(1);
  }
}
