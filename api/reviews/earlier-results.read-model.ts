import { Injectable } from '@nestjs/common';
import { KeyReadings } from '../platform/audit/key-readings.store.js';
import { Database } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { reviewProblems } from './reviews.errors.js';

/** What others found of the same variant by the same method; hidden from a reviewer until the first judgement is given. */
@Injectable()
export class EarlierResultsReadModel {
  constructor(
    private readonly database: Database,
    private readonly keyReadings: KeyReadings,
  ) {}

  /** @throws Problem 403 before the actor's own judgement of the standing revision */
  async of(actor: Actor, reference: string) {
    const submission = await this.database.client.submission.findUnique({
      where: { reference },
      include: { spool: { select: { variantId: true } }, methodVersion: { select: { methodId: true } } },
    });
    if (!submission || submission.state === 'draft')
      throw new Problem(platformProblems['request/not-found'], `No submission has the reference ${reference}.`);
    const judgement = await this.database.client.judgement.findFirst({
      where: { reviewerId: actor.accountId, revision: { submissionId: submission.id, number: submission.revision } },
    });
    if (!judgement) throw new Problem(reviewProblems['reviews/judge-first']);
    const rows = await this.database.client.submission.findMany({
      where: {
        state: 'accepted',
        id: { not: submission.id },
        spool: { variantId: submission.spool.variantId },
        methodVersion: { methodId: submission.methodVersion.methodId },
      },
      include: {
        edition: { select: { slug: true } },
        tester: { select: { displayName: true } },
        revisions: {
          orderBy: { number: 'desc' },
          take: 1,
          include: { instruments: { include: { instrument: { select: { code: true } } } } },
        },
      },
      orderBy: [{ benchDay: 'desc' }, { reference: 'desc' }],
      take: 50,
    });
    await this.keyReadings.note(actor, 'results', { references: [reference, ...rows.map((row) => row.reference)] });
    return rows.map((row) => ({
      reference: row.reference,
      edition: row.edition.slug,
      benchDay: row.benchDay.toISOString().slice(0, 10),
      tester: row.tester.displayName,
      instruments: row.revisions.flatMap(({ instruments }) => instruments.map(({ instrument }) => instrument.code)),
      figures: (row.revisions[0]?.figures ?? {}) as Record<string, unknown>,
    }));
  }
}
