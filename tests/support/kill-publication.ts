/** A worker that is killed in the middle of a publication: what readers see then, and what the next worker makes of it. */
import { spawn } from 'node:child_process';
import type { ChildProcess } from 'node:child_process';
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { releasesAt } from '../../api/releases/verify/release-source.js';
import { verifyRelease } from '../../api/releases/verify/verify-release.js';
import type { House } from './house.js';
import { erratumFor } from './season.js';

/** When the worker is killed: as soon as so many files of the new revision lie in the store; 0 at once, Infinity only after the database says published. */
export type Moment = number;

export interface Outcome {
  /** Revision that readers saw after the kill. */
  readonly seen: number;
  /** Differences that a verification of it found. */
  readonly differences: number;
  /** Revision that the next worker left. */
  readonly finished: number;
  readonly differencesAfter: number;
}

/** A worker as a process of its own, on the database and files of a house; what it says is heard unless it is to be silent. */
export function startWorker({ t }: Pick<House, 't'>, address: string, LOG_LEVEL: 'silent' | 'error' = 'silent'): ChildProcess {
  const env = {
    PATH: process.env['PATH'],
    DATABASE_URL: t.databaseUrl,
    DATA_FOLDER: t.dataFolder,
    PUBLIC_URL: address,
    WEBHOOKS_TO_NEAR_ADDRESSES: 'true',
    LOG_LEVEL,
  };
  const stdio = LOG_LEVEL === 'silent' ? 'ignore' : 'inherit';
  return spawn(process.execPath, ['--import', './.config/load-typescript.mjs', 'api/worker.ts'], { env, stdio });
}

/** How many files lie below a folder; none where it is not there. */
export const filesIn = async (folder: string): Promise<number> => {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true }).catch(() => []);
  return entries.filter((entry) => entry.isFile()).length;
};

/** Waits for something, a minute at most. @param what it is, in words */
export async function until(isSo: () => Promise<boolean>, what: string): Promise<void> {
  const end = Date.now() + 60_000;
  while (!(await isSo())) {
    if (Date.now() > end) throw new Error(`After a minute it is still not so that ${what}.`);
    await new Promise((resolve) => setTimeout(resolve, 2));
  }
}

/** When the process is gone. */
export const ended = (worker: ChildProcess): Promise<unknown> =>
  worker.exitCode !== null || worker.signalCode !== null ? Promise.resolve() : new Promise((resolve) => worker.once('exit', resolve));

/** The current revision as readers get it, verified from its address. */
async function asRead(house: House, address: string, edition: string): Promise<{ revision: number; differences: number }> {
  const { items } = (await house.t.call('get', '/v1/editions').expect(200)).body as { items: { edition: string; revision: number }[] };
  const revision = items.find((item) => item.edition === edition)?.revision ?? 0;
  if (revision === 0) return { revision, differences: 0 };
  const [source] = await releasesAt(`${address}/v1/releases/${edition}/${revision}/`);
  const verdict = source && (await verifyRelease(source));
  return { revision, differences: verdict?.differences.length ?? 1 };
}

/** Orders the next revision, kills the worker at the moment, looks, lets the next one's first step finish, and looks again. */
export async function killPublication(house: House, address: string, edition: string, moment: Moment): Promise<Outcome> {
  const erratum = await erratumFor(house.editor, edition, 'catalogueError', `Killed at ${moment}.`);
  const { body } = await house.editor.call('post', `/v1/editions/${edition}/releases`).send({ erratum }).expect(202);
  const { revision } = body as { revision: number };
  const folder = join(house.t.dataFolder, 'files/releases', edition, String(revision));
  const stateOf = async () => (await house.editor.call('get', `/v1/editions/${edition}/releases/${revision}`)).body.state as string;
  const first = startWorker(house, address);
  await until(
    async () => (moment === Infinity ? (await stateOf()) === 'published' : (await filesIn(folder)) >= moment),
    `${moment} files lie in the store`,
  );
  first.kill('SIGKILL');
  await ended(first);
  const after = await asRead(house, address, edition);
  // What a worker does first when it starts.
  await house.t.app.select(ReleasesModule).get(ReleaseWork).publishDue();
  const finished = await asRead(house, address, edition);
  return { seen: after.revision, differences: after.differences, finished: finished.revision, differencesAfter: finished.differences };
}
