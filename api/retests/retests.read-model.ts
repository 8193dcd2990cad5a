import { Injectable } from '@nestjs/common';
import { Database } from '../platform/database/database.js';
import { drawFrom } from './draw-order.js';

const RIG_KINDS = ['forceGauge', 'loadFrame'];

/** What a spool that is tested again may not be: whose it was, and on which rigs. */
export interface SecondTime {
  readonly testerId: string;
  readonly instruments: readonly string[];
  readonly method: string;
}

/** Draws and re-tests, as hand-in, editors and releases see them. */
@Injectable()
export class RetestsReadModel {
  constructor(private readonly database: Database) {}

  /** Spools that stand for a second time, by id. */
  async secondTimes(spoolIds: readonly string[]): Promise<Map<string, SecondTime>> {
    const rows = await this.database.client.retest.findMany({
      where: { spoolId: { in: [...spoolIds] } },
      include: {
        submission: {
          include: {
            methodVersion: { select: { method: { select: { slug: true } } } },
            revisions: {
              orderBy: { number: 'desc' },
              take: 1,
              include: { instruments: { include: { instrument: { select: { code: true, kind: true } } } } },
            },
          },
        },
      },
    });
    return new Map(
      rows.map(({ spoolId, submission }) => [
        spoolId,
        {
          testerId: submission.testerId,
          method: submission.methodVersion.method.slug,
          instruments: submission.revisions.flatMap(({ instruments }) =>
            instruments.filter(({ instrument }) => RIG_KINDS.includes(instrument.kind)).map(({ instrument }) => instrument.code),
          ),
        },
      ]),
    );
  }

  /** The draw of an edition, in its order; null before there is one. */
  async ofEdition(slug: string) {
    const draw = await this.database.client.retestDraw.findFirst({
      where: { edition: { slug } },
      include: {
        retests: {
          include: {
            spool: {
              select: {
                blindCode: true,
                submissions: { where: { state: 'accepted' }, select: { reference: true }, orderBy: { reference: 'asc' } },
              },
            },
            submission: { select: { reference: true, methodVersion: { select: { method: { select: { slug: true } } } } } },
          },
        },
      },
    });
    if (!draw) return null;
    const order = drawFrom(draw.from, draw.seed, Number(draw.percent));
    return {
      seed: draw.seed,
      percent: draw.percent.toFixed(),
      from: draw.from,
      drawnOn: draw.at.toISOString().slice(0, 10),
      drawn: draw.retests
        .map(({ spool, submission }) => ({
          original: submission.reference,
          method: submission.methodVersion.method.slug,
          spool: spool.blindCode,
          again: spool.submissions[0]?.reference ?? null,
        }))
        .sort((one, other) => order.indexOf(one.original) - order.indexOf(other.original)),
    };
  }
}
