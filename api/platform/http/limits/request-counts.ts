import { Inject, Injectable, Logger } from '@nestjs/common';
import type { OnApplicationShutdown } from '@nestjs/common';
import { LRUCache } from 'lru-cache';
import { CONFIG } from '../../../config.js';
import type { Config } from '../../../config.js';
import { networkOf } from './network.js';
import { RequestCountsStore } from './request-counts.store.js';

export const MINUTE_MS = 60_000;
/** What came in is told to the other servers so soon. */
const TELL_AFTER_MS = 250;
/** Whoever stays below this share of the limit is counted by each server alone: that costs nothing, and the limit is as far. */
const WORTH_TELLING = 0.05;
/** Networks that are remembered at once. */
const MOST_NETWORKS = 20_000;

interface Minute {
  requests: number;
  /** Of these, what the others have not been told. */
  untold: number;
  /** By a clock that nobody sets. */
  endsAt: number;
}

/**
 * Counts what each network asks, of all servers together. A request looks at memory alone; what was counted is told in one statement a
 * quarter of a second, which tells what others were asked. Without the database each server goes on counting for itself.
 */
@Injectable()
export class RequestCounts implements OnApplicationShutdown {
  private readonly minutes = new LRUCache<string, Minute>({ max: MOST_NETWORKS });
  private readonly untold = new Set<string>();
  private readonly log = new Logger(RequestCounts.name);
  private telling: NodeJS.Timeout | undefined;
  private forgottenAt = 0;

  constructor(
    private readonly store: RequestCountsStore,
    @Inject(CONFIG) private readonly config: Pick<Config, 'REQUESTS_PER_MINUTE'>,
  ) {}

  /** Counts one more of an address; how many its network has asked in its present minute, and how long that lasts [ms]. */
  count(address: string): { current: number; ttl: number } {
    const network = networkOf(address);
    const now = performance.now();
    let minute = this.minutes.get(network);
    if (!minute || minute.endsAt <= now) this.minutes.set(network, (minute = { requests: 0, untold: 0, endsAt: now + MINUTE_MS }));
    minute.requests += 1;
    minute.untold += 1;
    if (minute.requests > WORTH_TELLING * this.config.REQUESTS_PER_MINUTE) {
      this.untold.add(network);
      this.telling ??= setTimeout(() => void this.tell(), TELL_AFTER_MS).unref();
    }
    return { current: minute.requests, ttl: minute.endsAt - now };
  }

  onApplicationShutdown(): void {
    clearTimeout(this.telling);
  }

  private async tell(): Promise<void> {
    const told = new Map([...this.untold].map((network) => [network, this.minutes.get(network)?.untold ?? 0]));
    this.untold.clear();
    try {
      for (const { network, requests, ageMs } of await this.store.add(told)) {
        const minute = this.minutes.get(network);
        if (!minute) continue;
        minute.untold -= told.get(network) ?? 0;
        minute.requests = requests + minute.untold;
        minute.endsAt = performance.now() + MINUTE_MS - ageMs;
      }
      await this.forgetOld();
    } catch (error) {
      this.log.debug(`What was asked could not be told to other servers: ${(error as Error).message}`);
    } finally {
      this.telling = undefined;
    }
  }

  private async forgetOld(): Promise<void> {
    if (performance.now() - this.forgottenAt < MINUTE_MS) return;
    this.forgottenAt = performance.now();
    await this.store.forgetOld();
  }
}

/** The counts as the rate limit asks for them. */
export const storeOf = (counts: RequestCounts) =>
  class {
    incr(address: string, done: (error: Error | null, counted?: { current: number; ttl: number }) => void): void {
      done(null, counts.count(address));
    }

    child(): this {
      return this;
    }
  };
