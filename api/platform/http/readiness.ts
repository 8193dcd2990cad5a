import { Inject, Injectable } from '@nestjs/common';
import type { BeforeApplicationShutdown } from '@nestjs/common';
import { setTimeout as pause } from 'node:timers/promises';
import { CONFIG } from '../../config.js';
import type { Config } from '../../config.js';
import { Database } from '../database/database.js';
import { platformProblems } from '../errors/platform.errors.js';
import { Problem } from '../errors/problem.js';

const ANSWER_WITHIN_MS = 2000;
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

  /** @throws Problem that says why not */
  async require(): Promise<void> {
    if (this.hasBegunToEnd) throw notReady('The server is about to end.');
    const late = new AbortController();
    try {
      const answer = this.database.client.$queryRaw`SELECT 1`.then(() => true);
      const isThere = await Promise.race([answer, pause(ANSWER_WITHIN_MS, false, { signal: late.signal })]);
      if (!isThere) throw new Error('no answer in time');
    } catch {
      throw notReady('The database does not answer. What is published can be read meanwhile.');
    } finally {
      late.abort();
    }
  }

  async beforeApplicationShutdown(): Promise<void> {
    this.hasBegunToEnd = true;
    await pause(1000 * this.config.DRAIN_SECONDS);
  }
}
