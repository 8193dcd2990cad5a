import { Injectable } from '@nestjs/common';
import { Database } from '../../platform/database/database.js';
import { toTraceEvidence } from '../../readings/traces/trace-evidence.js';
import type { TraceEvidence } from '../../readings/traces/trace-evidence.js';

/** Traces of the revision of a submission that stands. */
@Injectable()
export class TracesReadModel {
  constructor(private readonly database: Database) {}

  /** By the numbers of their specimens. */
  async of(reference: string): Promise<(TraceEvidence & { readonly specimen: number })[]> {
    const submission = await this.database.client.submission.findUnique({ where: { reference }, select: { id: true, revision: true } });
    if (!submission) return [];
    const rows = await this.database.client.trace.findMany({
      where: { specimen: { revision: { submissionId: submission.id, number: submission.revision } } },
      include: { specimen: { select: { number: true } } },
      orderBy: { specimen: { number: 'asc' } },
    });
    return rows.map((row) => ({ specimen: row.specimen.number, ...toTraceEvidence(row) }));
  }
}
