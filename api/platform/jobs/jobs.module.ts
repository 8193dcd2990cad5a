/** Purpose: shows operators what the worker has to do and where it failed, and the backups; orders one at once. */
import { Controller, Get, Module, Post } from '@nestjs/common';
import { CronExpressionParser } from 'cron-parser';
import { backupsResponse, openOrdersResponse } from '../../contract/order-state.js';
import { AuditTrail } from '../audit/audit-trail.store.js';
import { Clock } from '../clock/clock.js';
import { Database } from '../database/database.js';
import { platformProblems } from '../errors/platform.errors.js';
import { Problem } from '../errors/problem.js';
import { CurrentActor } from '../http/access.js';
import type { Actor } from '../http/access.js';
import { Endpoint } from '../http/endpoint.js';
import { Jobs } from './jobs.js';
import type { OrderQueue } from './jobs.js';

/** Orders for backups, of every night and between. */
export const BACKUPS: OrderQueue = { name: 'backup', policy: 'short' };

@Controller('v1/operations')
class OperationsController {
  constructor(
    private readonly jobs: Jobs,
    private readonly clock: Clock,
    private readonly database: Database,
    private readonly audit: AuditTrail,
  ) {}

  @Get('orders')
  @Endpoint({ summary: 'Orders to the worker that wait, are at work or failed.', allow: ['admin'], answer: openOrdersResponse })
  async getOpenOrders() {
    return { items: await this.jobs.open(), nextCursor: null };
  }

  @Get('backups')
  @Endpoint({ summary: 'Backups of the last week, and when the next is made.', allow: ['admin'], answer: backupsResponse })
  async getBackups() {
    const times = await this.jobs.timesOf(BACKUPS.name);
    const next = times && CronExpressionParser.parse(times, { tz: 'UTC', currentDate: this.clock.now() }).next();
    return { times, nextAt: next && next.toDate().toISOString(), items: await this.jobs.lastOf(BACKUPS), nextCursor: null };
  }

  @Post('backups')
  @Endpoint({
    summary: 'Orders a backup at once; it is read through when it is made.',
    allow: ['admin'],
    status: 202,
    answer: backupsResponse,
  })
  async postBackup(@CurrentActor() actor: Actor) {
    if ((await this.jobs.timesOf(BACKUPS.name)) === null) throw new Problem(platformProblems['operations/no-backups']);
    await this.database.transaction(async (tx) => {
      await this.jobs.order(tx, BACKUPS, {});
      await this.audit.record(tx, { actorId: actor.accountId, action: 'backup.ordered', objectType: 'house', objectId: 'backup' });
    });
    return this.getBackups();
  }
}

@Module({ controllers: [OperationsController] })
export class JobsModule {}
