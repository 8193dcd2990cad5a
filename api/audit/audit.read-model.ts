import { Injectable } from '@nestjs/common';
import { KeyReadings } from '../platform/audit/key-readings.store.js';
import { Database } from '../platform/database/database.js';
import type { Actor } from '../platform/http/access.js';
import type { AuditQuery } from '../contract/endpoints/audit.js';

/** The audit trail, newest first. */
@Injectable()
export class AuditReadModel {
  constructor(
    private readonly database: Database,
    private readonly keyReadings: KeyReadings,
  ) {}

  async page(reader: Actor, { limit, cursor, objectType, objectId }: AuditQuery) {
    const rows = await this.database.client.auditEvent.findMany({
      where: { ...(cursor ? { id: { lt: cursor } } : {}), ...(objectType ? { objectType } : {}), ...(objectId ? { objectId } : {}) },
      orderBy: { id: 'desc' },
      take: limit + 1,
    });
    const items = rows.slice(0, limit).map((row) => ({ ...row, at: row.at.toISOString() }));
    await this.keyReadings.note(reader, 'key', {
      codes: items.flatMap(({ objectType, objectId }) => (objectType === 'spool' ? [objectId] : [])),
    });
    return { items, nextCursor: rows.length > limit ? (items.at(-1)?.id ?? null) : null };
  }
}
