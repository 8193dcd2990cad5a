import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { outOfControlFinding } from '../checks/check-out-of-control.js';
import { FindingsStore } from '../findings/findings.store.js';
import type { Transaction } from '../platform/database/database.js';
import { chartsOf, evidenceOfRig } from '../reckoning/rigs/control-charts.js';
import type { ControlChart } from '../reckoning/rigs/control-charts.js';
import { ControlPullsReadModel } from './control-pulls.read-model.js';
import type { ControlPullOnRecord } from './control-pulls.read-model.js';
import { ControlPullsStore } from './control-pulls.store.js';

const OUT_OF_CONTROL = 'rig/out-of-control';

/** A rig in one method. */
export interface RigAndMethod {
  readonly instrument: { readonly id: string; readonly code: string };
  readonly method: { readonly id: string; readonly slug: string };
}

/** Puts the finding "rig out of control" on every submission that was pulled in doubt, accepted ones too; each once. */
@Injectable()
export class CastDoubt {
  constructor(
    private readonly store: ControlPullsStore,
    private readonly findings: FindingsStore,
    private readonly pulls: ControlPullsReadModel,
    private readonly audit: AuditTrail,
  ) {}

  /** Of one rig in one method, as it stands in the transaction. */
  async charts(tx: Transaction, { instrument, method }: RigAndMethod): Promise<ControlChart<ControlPullOnRecord>[]> {
    const which = { rigs: new Map([[instrument.id, instrument.code]]), methods: new Map([[method.id, method.slug]]) };
    return chartsOf(await this.pulls.pulls(which, tx));
  }

  /**
   * @param charts of the rig in the method, with what has just changed in them
   * @param since bench day from which the evidence may have changed
   * @returns how many submissions came into doubt
   */
  async run(
    tx: Transaction,
    actorId: string,
    { instrument, method }: RigAndMethod,
    charts: readonly ControlChart[],
    since: string,
  ): Promise<number> {
    const pulled = await this.store.pulledSince(tx, instrument.id, method.id, since, OUT_OF_CONTROL);
    const doubted = pulled.flatMap(({ reference, revisionId, benchDay, isDoubted }) => {
      const { state, decidedOn } = evidenceOfRig(charts, instrument.code, method.slug, benchDay);
      return isDoubted || state !== 'outOfControl'
        ? []
        : [{ reference, revisionId, finding: outOfControlFinding(instrument.code, decidedOn ?? '') }];
    });
    await this.findings.add(tx, doubted);
    await this.audit.recordAll(
      tx,
      doubted.map(({ reference, finding }) => ({
        actorId,
        action: 'submission.doubted',
        objectType: 'submission',
        objectId: reference,
        after: { code: finding.code, message: finding.message },
      })),
    );
    return doubted.length;
  }
}
