import { setTimeout as pause } from 'node:timers/promises';
import type { Program } from './program.js';

const READY_WITHIN_MS = 60_000;
const ASK_AGAIN_MS = 100;

/**
 * Waits until the server says that it can answer, or has ended. What another program answers at that address does not count.
 * @returns false when the server ended before it was ready
 * @throws Error with the server's last answer when it is not ready within 60 s
 */
export async function waitUntilReady(server: Program, url: string): Promise<boolean> {
  const giveUpAt = Date.now() + READY_WITHIN_MS;
  let answer = 'no answer';
  while (server.isRunning()) {
    answer = await ask(`${url}/health/ready`);
    if (answer === '' && server.isListening()) return true;
    if (Date.now() > giveUpAt)
      throw new Error(`The server was not ready within ${READY_WITHIN_MS / 1000} s. ${url}/health/ready: ${answer}`);
    await pause(ASK_AGAIN_MS);
  }
  return false;
}

const BUILT_WITHIN_MS = 180_000;
const SERVICE_UNAVAILABLE = 503;

/** Waits until the front page is there; false when it is still being built after three minutes. */
export async function waitUntilSiteIsBuilt(url: string): Promise<boolean> {
  const giveUpAt = Date.now() + BUILT_WITHIN_MS;
  while (Date.now() < giveUpAt) {
    const status = await fetch(`${url}/`).then(
      (response) => response.status,
      () => SERVICE_UNAVAILABLE,
    );
    if (status !== SERVICE_UNAVAILABLE) return true;
    await pause(ASK_AGAIN_MS);
  }
  return false;
}

/** Empty when ready, else what came instead. */
async function ask(url: string): Promise<string> {
  try {
    const response = await fetch(url, { signal: AbortSignal.timeout(2000) });
    return response.ok ? '' : `${response.status} ${await response.text()}`;
  } catch (error) {
    return String(error);
  }
}
