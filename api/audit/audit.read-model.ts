import { Injectable } from '@nestjs/common';
import { Database } from '../platform/database/database.js';
import type { AuditQuery } from '../contract/endpoints/audit.js';

const DAY_MS = 86_400_000;

/** The audit trail, newest first. */
@Injectable()
export class AuditReadModel {
  constructor(private readonly database: Database) {}

  async page({ limit, cursor, from, to, actorId, objectType, objectId }: AuditQuery) {
    const at = { ...(from && { gte: new Date(from) }), ...(to && { lt: new Date(Date.parse(to) + DAY_MS) }) };
    const rows = await this.database.client.auditEvent.findMany({
      where: {
        ...(actorId && { actorId }),
        ...(objectType && { objectType }),
        ...(objectId && { objectId }),
        ...(cursor && { id: { lt: cursor } }),
        at,
      },
      orderBy: { id: 'desc' },
      take: limit + 1,
    });
    const items = rows.slice(0, limit).map((row) => ({ ...row, at: row.at.toISOString() }));
    return { items, nextCursor: rows.length > limit ? (items.at(-1)?.id ?? null) : null };
  }
}
