/**
 * Purpose: who did what when, before and after. The trail is append-only by trigger.
 * Every feature writes to it in its own transaction; admins read it.
 */
import { Controller, Get, Module, Query } from '@nestjs/common';
import { CurrentActor } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { KeyReadings } from '../platform/audit/key-readings.store.js';
import { Endpoint } from '../platform/http/endpoint.js';
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

@Module({ controllers: [AuditController], providers: [AuditReadModel], exports: [AuditReadModel] })
export class AuditModule {}
