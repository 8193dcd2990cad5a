import { Injectable } from '@nestjs/common';
import { Clock } from '../platform/clock/clock.js';
import { among } from '../platform/database/by-id.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/database.js';

/** What somebody read that tells of a spool: its key, its label, what others found of it, that it is tested again. */
export type KeyReading = 'key' | 'label' | 'results' | 'retest';

/** Which spools were told: by blind codes, or by submissions of them. */
export type Told = { readonly codes: readonly string[] } | { readonly references: readonly string[] };

/** The only writer of who read what tells of a spool. Written before it is told, so that nobody reads a key and is not known to have. */
@Injectable()
export class KeyReadings {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  /** Puts on record that somebody reads; once for each spool and way. */
  async note(
    { accountId }: { readonly accountId: string },
    how: KeyReading,
    told: Told,
    writer: Transaction = this.database.client,
  ): Promise<void> {
    const [codes, references] = 'codes' in told ? [told.codes, []] : [[], told.references];
    if (codes.length + references.length === 0) return;
    await writer.$executeRaw`
      INSERT INTO "key_reading" ("account_id", "spool_id", "how", "at")
      SELECT ${accountId}::uuid, p."id", ${how}, ${this.clock.now()} FROM "spool" p
      WHERE p."blind_code" = ANY(${[...codes]})
        OR p."id" IN (SELECT s."spool_id" FROM "submission" s WHERE s."reference" = ANY(${[...references]}))
      ORDER BY p."id" ON CONFLICT DO NOTHING`;
  }

  /** What an account read of spools, by the id of each; oldest first. */
  async of(accountId: string, spoolIds: readonly string[], reader: Transaction = this.database.client): Promise<Map<string, KeyReading[]>> {
    const rows = await reader.keyReading.findMany({
      where: { accountId, spoolId: among(spoolIds) },
      orderBy: [{ at: 'asc' }, { how: 'asc' }],
    });
    const bySpool = Map.groupBy(rows, ({ spoolId }) => spoolId);
    return new Map([...bySpool].map(([spoolId, read]) => [spoolId, read.map(({ how }) => how as KeyReading)]));
  }
}
