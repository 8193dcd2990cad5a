import { Injectable } from '@nestjs/common';
import { ControlPullsReadModel } from '../../control-pulls/control-pulls.read-model.js';
import { InstrumentsReadModel } from '../../instruments/instruments.read-model.js';
import type { Transaction } from '../../platform/database/database.js';
import { Problem } from '../../platform/errors/problem.js';
import { submissionProblems } from '../submissions.errors.js';

/**
 * Lets nothing be stored that the checks saw beside an older record of its rigs. Asked after storing: naming an instrument waits for
 * whoever hands in a pull of it, and who comes later finds what is stored and casts doubt on it.
 */
@Injectable()
export class RequireRigsAsSeen {
  constructor(
    private readonly controlPulls: ControlPullsReadModel,
    private readonly instruments: InstrumentsReadModel,
  ) {}

  /** @param seen id of each rig → its records as the checks saw them first */
  async run(tx: Transaction, seen: ReadonlyMap<string, number>): Promise<void> {
    const now = await this.controlPulls.records(seen.keys(), tx);
    const changed = [...seen].flatMap(([rig, records]) => (now.get(rig) === records ? [] : [rig]));
    if (changed.length === 0) return;
    const codes = [...(await this.instruments.codes(changed)).values()].sort();
    throw new Problem(submissionProblems['submissions/rig-watched'], `Control pulls of ${codes.join(', ')} came in.`);
  }
}
