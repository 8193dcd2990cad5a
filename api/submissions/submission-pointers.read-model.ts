import { Injectable } from '@nestjs/common';
import { among } from '../platform/database/by-id.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/database.js';

/** Which submissions are of what, for features whose own rows are of the same. */
@Injectable()
export class SubmissionPointers {
  constructor(private readonly database: Database) {}

  /** Id of a submission; null when there is none. */
  async idOf(reference: string): Promise<string | null> {
    return (await this.database.client.submission.findUnique({ where: { reference }, select: { id: true } }))?.id ?? null;
  }

  /** Ids of spools of which something was handed in, by one tester or by anybody; a draft does not count. */
  async handedInOn(spoolIds: readonly string[], reader: Transaction = this.database.client, testerId?: string): Promise<Set<string>> {
    const rows = await reader.submission.findMany({
      where: { spoolId: among(spoolIds), revision: { gt: 0 }, ...(testerId === undefined ? {} : { testerId }) },
      select: { spoolId: true },
      distinct: ['spoolId'],
    });
    return new Set(rows.map(({ spoolId }) => spoolId));
  }

  /** Handed in and neither refused, taken back nor withdrawn, of these editions and spools; the last reference first. */
  standingOn(editionIds: readonly string[], spoolIds: readonly string[]) {
    return this.database.client.submission.findMany({
      where: { editionId: among(editionIds), spoolId: among(spoolIds), state: { in: ['submitted', 'returned', 'accepted'] } },
      select: { reference: true, editionId: true, spoolId: true, testerId: true, methodVersionId: true },
      orderBy: { reference: 'desc' },
    });
  }

  /** Editions of accepted submissions by the ids of their spools. */
  acceptedOn(spoolIds: readonly string[]) {
    return this.database.client.submission.findMany({
      where: { spoolId: among(spoolIds), state: 'accepted' },
      select: { spoolId: true, editionId: true },
    });
  }
}
