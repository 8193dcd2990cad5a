import { Injectable } from '@nestjs/common';
import { Database } from '../platform/database/database.js';
import type { AuditQuery } from '../contract/endpoints/audit.js';

/** The audit trail, newest first. */
@Injectable()
export class AuditReadModel {
  constructor(private readonly database: Database) {}

  async page({ limit, cursor, objectType, objectId }: AuditQuery) {
    const rows = await this.database.client.auditEvent.findMany({
      where: { ...(cursor ? { id: { lt: cursor } } : {}), ...(objectType ? { objectType } : {}), ...(objectId ? { objectId } : {}) },
      orderBy: { id: 'desc' },
      take: limit + 1,
    });
    const items = rows.slice(0, limit).map((row) => ({ ...row, at: row.at.toISOString() }));
    return { items, nextCursor: rows.length > limit ? (items.at(-1)?.id ?? null) : null };
  }
}
