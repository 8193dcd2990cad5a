import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { setTimeout } from 'node:timers/promises';
import { chromium } from 'playwright-core';
import type { Browser, Page } from 'playwright-core';

/** Where distributions put the browser. */
const KNOWN_PATHS = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/snap/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
];

/** Waits for another apt-get instead of failing beside it. */
const APT = ['-y', '--no-install-recommends', '-o', 'DPkg::Lock::Timeout=300'];

/** Nothing in the background, nothing over the network. The sandbox needs rights that containers do not give. */
const FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/**
 * Starts the machine's Chromium without a window; close it in `afterAll`.
 * @param film what its camera sees, a file of raw video; without one it has no camera
 */
export function launchBrowser(film?: string): Promise<Browser> {
  const camera =
    film === undefined
      ? []
      : ['--use-fake-device-for-media-stream', '--use-fake-ui-for-media-stream', `--use-file-for-fake-video-capture=${film}`];
  return chromium.launch({ executablePath: findChromium(), args: [...FLAGS, ...camera] });
}

/** With nothing under way for so long a page has what it asks for by itself; the browser's own measure is half a second [ms]. */
const QUIET_MS = 100;

/** Watches what a page asks for from now on; the answer waits until it asks for nothing more. */
export function watchRequests(page: Page): () => Promise<void> {
  let underWay = 0;
  page.on('request', () => (underWay += 1));
  for (const end of ['requestfinished', 'requestfailed'] as const) page.on(end as 'requestfinished', () => (underWay -= 1));
  return async () => {
    for (let since = Date.now(); Date.now() - since < QUIET_MS;) {
      await setTimeout(20);
      if (underWay > 0) since = Date.now();
    }
  };
}

/**
 * The path of a Chromium on this machine: CHROMIUM_PATH, else a known place, else, as root with apt-get, a fresh install.
 * @throws Error when there is none, saying how to get one
 */
export function findChromium(): string {
  const named = process.env['CHROMIUM_PATH'];
  if (named !== undefined && named !== '') {
    if (!existsSync(named))
      throw new Error(`CHROMIUM_PATH names ${named}, which does not exist. Name the browser's program, or leave it unset.`);
    return named;
  }
  const found = KNOWN_PATHS.find(existsSync) ?? installChromium();
  if (found === undefined) {
    throw new Error(
      `The browser tests need Chromium; looked at ${KNOWN_PATHS.join(', ')}. Install it, or set CHROMIUM_PATH to its program.`,
    );
  }
  return found;
}

function installChromium(): string | undefined {
  if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return undefined;
  console.log('Installing Chromium for the browser tests (apt-get, once) …');
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const install = () => spawnSync('apt-get', ['install', ...APT, 'chromium'], { env, encoding: 'utf8' });
  let answer = install();
  if (answer.status !== 0) {
    spawnSync('apt-get', ['update', ...APT], { env });
    answer = install();
  }
  if (answer.status !== 0)
    throw new Error(`apt-get could not install chromium; install it by hand. It said:\n${answer.stdout}${answer.stderr}`);
  return KNOWN_PATHS.find(existsSync);
}
