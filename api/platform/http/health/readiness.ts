import { Inject, Injectable } from '@nestjs/common';
import type { BeforeApplicationShutdown } from '@nestjs/common';
import { setTimeout as pause } from 'node:timers/promises';
import { CONFIG } from '../../../config.js';
import type { Config } from '../../../config.js';
import { Database } from '../../database/database.js';
import { platformProblems } from '../../errors/platform.errors.js';
import { Problem } from '../../errors/problem.js';
import { disksOf } from '../../file-store/disks.js';

const ANSWER_WITHIN_MS = 2000;
const LEAST_ROOM_BYTES = 100 * 1024 * 1024;
const FROZEN = 'The database takes no changes: nothing is taken in or published. What is published can be read meanwhile.';
const fullOf = (folder: string) =>
  `The disk of ${folder === '.' ? 'the data folder' : `${folder} in the data folder`} is full: nothing is published. Make room; nothing that is published is lost.`;
const notReady = (detail: string) => new Problem(platformProblems['server/not-ready'], detail, [], { 'Retry-After': '5' });

/** Whether work may be sent here. Before it ends the server says no for a while, so that proxies send it elsewhere, and still answers. */
@Injectable()
export class Readiness implements BeforeApplicationShutdown {
  private hasBegunToEnd = false;

  constructor(
    private readonly database: Database,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  isEnding(): boolean {
    return this.hasBegunToEnd;
  }

  /**
   * @returns what is wrong though work may be sent here; empty when nothing is
   * @throws Problem that says why not
   */
  async require(): Promise<string[]> {
    if (this.hasBegunToEnd) throw notReady('The server is about to end.');
    const late = new AbortController();
    try {
      const answer = this.database.client.$queryRaw<{ isFrozen: boolean }[]>`
        SELECT current_setting('transaction_read_only') = 'on' AS "isFrozen"`;
      const rows = await Promise.race([answer, pause(ANSWER_WITHIN_MS, null, { signal: late.signal })]);
      if (!rows) throw new Error('no answer in time');
      return [...(rows[0]?.isFrozen ? [FROZEN] : []), ...(await this.fullDisks())];
    } catch {
      throw notReady('The database does not answer. What is published can be read meanwhile.');
    } finally {
      late.abort();
    }
  }

  private async fullDisks(): Promise<string[]> {
    const disks = await disksOf(this.config.DATA_FOLDER);
    return disks.filter(({ freeBytes }) => freeBytes < LEAST_ROOM_BYTES).map(({ folder }) => fullOf(folder));
  }

  async beforeApplicationShutdown(): Promise<void> {
    this.hasBegunToEnd = true;
    await pause(1000 * this.config.DRAIN_SECONDS);
  }
}
