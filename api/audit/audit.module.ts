/**
 * Purpose: who did what when, before and after. The trail is append-only by trigger.
 * Every feature writes to it in its own transaction; admins read it. Beside it stands what a row said before it was superseded, and who
 * read what tells of a spool.
 */
import { Controller, Get, Global, Module, Query } from '@nestjs/common';
import { CurrentActor } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { KeyReadings } from './key-readings.store.js';
import { SupersededRows } from './superseded.store.js';
import { AuditReadModel } from './audit.read-model.js';
import { auditQuery, auditResponse } from '../contract/endpoints/audit.js';
import type { AuditQuery } from '../contract/endpoints/audit.js';

@Controller('v1/audit')
class AuditController {
  constructor(
    private readonly audit: AuditReadModel,
    private readonly keyReadings: KeyReadings,
  ) {}

  @Get()
  @Endpoint({ summary: 'The audit trail, newest first.', allow: ['admin'], answer: auditResponse })
  async getAudit(@CurrentActor() actor: Actor, @Query({ schema: auditQuery }) query: AuditQuery) {
    const page = await this.audit.page(query);
    const codes = page.items.flatMap(({ objectType, objectId }) => (objectType === 'spool' ? [objectId] : []));
    await this.keyReadings.note(actor, 'key', { codes });
    return page;
  }
}

@Global()
@Module({
  controllers: [AuditController],
  providers: [AuditReadModel, KeyReadings, SupersededRows],
  exports: [AuditReadModel, KeyReadings, SupersededRows],
})
export class AuditModule {}
