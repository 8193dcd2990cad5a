import { Injectable } from '@nestjs/common';
import { z } from 'zod';
import { Database } from '../platform/database/database.js';
import type { AuditQuery } from '../contract/endpoints/audit.js';

const DAY_MS = 86_400_000;
const UUID = z.uuid();
const named = z.looseObject({ name: z.string() }).or(z.looseObject({ note: z.string() }).transform(({ note }) => ({ name: note })));

/** A person is known by the account, and has too many events to look through; what has a slug, a code or a reference is called so. */
const isNameless = (row: { readonly objectType: string; readonly objectId: string }): boolean =>
  row.objectType !== 'account' && UUID.safeParse(row.objectId).success;

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
    const shown = rows.slice(0, limit);
    const names = await this.namesOf(shown.filter(isNameless).map((row) => row.objectId));
    const items = shown.map((row) => ({ ...row, at: row.at.toISOString(), objectName: names.get(row.objectId) ?? null }));
    return { items, nextCursor: rows.length > limit ? (items.at(-1)?.id ?? null) : null };
  }

  /** What only has an id is called as it was when it was put on record: later acts tell no more than their own. */
  private async namesOf(ids: readonly string[]): Promise<ReadonlyMap<string, string>> {
    const first = await this.database.client.auditEvent.findMany({
      where: { objectId: { in: [...ids] } },
      orderBy: { id: 'asc' },
      distinct: ['objectId'],
      select: { objectId: true, after: true },
    });
    return new Map(
      first.flatMap(({ objectId, after }) => {
        const told = named.safeParse(after).data;
        return told ? [[objectId, told.name] as const] : [];
      }),
    );
  }
}
