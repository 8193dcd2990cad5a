import { Injectable } from '@nestjs/common';
import type { Finding } from '../checks/finding.js';
import { among } from '../platform/database/by-id.js';
import { Database } from '../platform/database/database.js';

export interface FindingOnRecord {
  readonly id: string;
  readonly revisionId: string;
  readonly code: string;
  readonly severity: string;
  /** As the check returned it. */
  readonly detail: Finding;
  /** What the reviewer wrote about it; null while it has no answer. */
  readonly resolution: string | null;
}

/** What was found on submissions, as screens, reviews and releases see it. */
@Injectable()
export class FindingsReadModel {
  constructor(private readonly database: Database) {}

  /** By the ids of the revisions that they were found on, oldest first; a revision without any has none. */
  async ofRevisions(revisionIds: readonly string[]): Promise<Map<string, FindingOnRecord[]>> {
    const rows = await this.database.client.finding.findMany({ where: { revisionId: among(revisionIds) }, orderBy: { id: 'asc' } });
    const findings = rows.map((row) => ({ ...row, detail: row.detail as unknown as Finding }));
    return Map.groupBy(findings, ({ revisionId }) => revisionId);
  }
}
