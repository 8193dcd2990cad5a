import { Injectable } from '@nestjs/common';
import { Database } from '../platform/database/database.js';
import type { Prisma } from '../platform/database/generated/client.js';

/** What stands for an assignment once it is handed in. */
const HANDED_IN = ['submitted', 'returned', 'accepted'];

/** Assignments with what was handed in for them. */
@Injectable()
export class AssignmentsReadModel {
  constructor(private readonly database: Database) {}

  ofEdition(slug: string) {
    return this.list({ edition: { slug } });
  }

  /** A tester's own, of open editions. */
  async ofTester(testerId: string) {
    return (await this.list({ testerId, edition: { state: 'open' } })).map(({ tester: _, ...own }) => own);
  }

  private async list(where: Prisma.AssignmentWhereInput) {
    const rows = await this.database.client.assignment.findMany({
      where: { ...where, takenBackAt: null },
      include: {
        edition: { select: { slug: true } },
        spool: { select: { blindCode: true } },
        method: { select: { slug: true } },
        tester: { select: { id: true, displayName: true } },
      },
      orderBy: [{ dueOn: { sort: 'asc', nulls: 'last' } }, { id: 'asc' }],
    });
    const done = await this.handedIn(rows);
    const items = rows.map(({ id, edition, spool, method, tester, specimens, dueOn, ...at }) => ({
      id,
      edition: edition.slug,
      spool: spool.blindCode,
      method: method.slug,
      tester,
      specimens,
      dueOn: dueOn && dueOn.toISOString().slice(0, 10),
      handedIn: done.get(keyOf(at)) ?? null,
    }));
    return [...items.filter(({ handedIn }) => handedIn === null), ...items.filter(({ handedIn }) => handedIn !== null)];
  }

  private async handedIn(rows: readonly Work[]): Promise<Map<string, string>> {
    const submissions = await this.database.client.submission.findMany({
      where: {
        editionId: { in: rows.map(({ editionId }) => editionId) },
        spoolId: { in: rows.map(({ spoolId }) => spoolId) },
        state: { in: HANDED_IN },
      },
      select: { reference: true, editionId: true, spoolId: true, testerId: true, methodVersion: { select: { methodId: true } } },
      orderBy: { reference: 'desc' },
    });
    return new Map(submissions.map(({ reference, methodVersion, ...at }) => [keyOf({ ...at, ...methodVersion }), reference]));
  }
}

interface Work {
  readonly editionId: string;
  readonly spoolId: string;
  readonly methodId: string;
  readonly testerId: string;
}
const keyOf = ({ editionId, spoolId, methodId, testerId }: Work): string => [editionId, spoolId, methodId, testerId].join(' ');
