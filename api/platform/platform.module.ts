/**
 * Plumbing for every feature: database, clock, identifiers, audit trail, superseded rows, jobs, files.
 * Knows no word of the domain but the audit trail's.
 */
import { Global, Module } from '@nestjs/common';
import type { DynamicModule } from '@nestjs/common';
import { AuditTrail } from './audit/audit-trail.store.js';
import { SupersededRows } from './audit/superseded.store.js';
import { CONFIG } from '../config.js';
import type { Config } from '../config.js';
import { Clock } from './clock/clock.js';
import { Database } from './database/database.js';
import { FileStore } from './file-store/file-store.js';
import { Identifiers } from './identifiers/identifiers.js';
import { Jobs } from './jobs/jobs.js';

export interface PlatformOptions {
  readonly config: Config;
  readonly clock?: Clock;
  readonly identifiers?: Identifiers;
}

@Global()
@Module({})
export class PlatformModule {
  static with(options: PlatformOptions): DynamicModule {
    const providers = [
      { provide: CONFIG, useValue: options.config },
      { provide: Clock, useValue: options.clock ?? new Clock() },
      { provide: Identifiers, useValue: options.identifiers ?? new Identifiers() },
      Database,
      AuditTrail,
      SupersededRows,
      FileStore,
      Jobs,
    ];
    return { module: PlatformModule, providers, exports: providers };
  }
}
