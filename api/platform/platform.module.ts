/**
 * Plumbing for every feature: database, clock, identifiers, audit trail, jobs, files.
 * Knows no word of the domain.
 */
import { Global, Module } from '@nestjs/common';
import type { DynamicModule, OnApplicationShutdown } from '@nestjs/common';
import { AuditTrail } from './audit/audit-trail.store.js';
import { CONFIG } from '../config.js';
import type { Config } from '../config.js';
import { Clock } from './clock/clock.js';
import { Database } from './database/database.js';
import { FileStore } from './file-store/file-store.js';
import { Readiness } from './http/health/readiness.js';
import { IdempotentAnswersStore } from './http/idempotency/idempotent-answers.store.js';
import { RequestCounts } from './http/limits/request-counts.js';
import { RequestCountsStore } from './http/limits/request-counts.store.js';
import { Identifiers } from './identifiers/identifiers.js';
import { Mail } from './mail/mail.js';
import { Jobs } from './jobs/jobs.js';
import { ObjectStorage } from './object-storage/object-storage.js';

export interface PlatformOptions {
  readonly config: Config;
  readonly clock?: Clock;
  readonly identifiers?: Identifiers;
}

@Global()
@Module({})
export class PlatformModule implements OnApplicationShutdown {
  constructor(
    private readonly jobs: Jobs,
    private readonly database: Database,
  ) {}

  /** When nobody asks any more: first the orders at work come to their end, then the database is left. */
  async onApplicationShutdown(): Promise<void> {
    await this.jobs.stop();
    await this.database.close();
  }

  static with(options: PlatformOptions): DynamicModule {
    const providers = [
      { provide: CONFIG, useValue: options.config },
      { provide: Clock, useValue: options.clock ?? new Clock() },
      { provide: Identifiers, useValue: options.identifiers ?? new Identifiers() },
      Database,
      AuditTrail,
      FileStore,
      IdempotentAnswersStore,
      Jobs,
      Mail,
      ObjectStorage,
      Readiness,
      RequestCounts,
      RequestCountsStore,
    ];
    return { module: PlatformModule, providers, exports: providers };
  }
}
