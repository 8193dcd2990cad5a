import { Injectable } from '@nestjs/common';
import type { Finding } from '../checks/finding.js';
import type { Transaction } from '../platform/database/database.js';
import { insertRows, tableRows } from '../platform/database/insert-rows.js';
import type { TableRows } from '../platform/database/insert-rows.js';
import { uuid7 } from '../platform/identifiers/uuid7.js';

/** A finding on a revision of a submission. */
export interface FindingOnRevision {
  readonly revisionId: string;
  readonly finding: Finding;
}

/** The only writer of findings, whoever found something: the checks at a hand-in, a trace that disagrees, a rig that went out of control. */
@Injectable()
export class FindingsStore {
  /** All of them in one statement. */
  async add(tx: Transaction, found: readonly FindingOnRevision[]): Promise<void> {
    await insertRows(tx, this.rows(found));
  }

  /** Their rows, for who stores them together with the revisions that they are on. */
  rows(found: readonly FindingOnRevision[]): TableRows {
    return tableRows(
      'finding',
      found.map(({ revisionId, finding }) => ({
        id: uuid7(),
        revisionId,
        code: finding.code,
        severity: finding.severity,
        detail: finding,
      })),
    );
  }

  /** Puts a reviewer's words beside a finding; the database takes them once. */
  async answer(tx: Transaction, id: string, words: string): Promise<void> {
    await tx.finding.update({ where: { id }, data: { resolution: words } });
  }
}
