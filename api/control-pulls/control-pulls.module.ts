/**
 * Control pulls: pulls on the house's reference spool that begin a bench day and watch each rig for drift.
 * A rig is in control, out of control, or without evidence, in each method; a good pull always clears it.
 * A pull that puts a rig out casts doubt on every submission back to the last good one, accepted ones too: a finding that a reviewer answers.
 * Testers hand in pulls; reviewers read the charts and strike a pull of somebody else; editors name the control lines. Nothing is changed or deleted.
 */
import { Module } from '@nestjs/common';
import { AccountsModule } from '../accounts/accounts.module.js';
import { FindingsModule } from '../findings/findings.module.js';
import { InstrumentsModule } from '../instruments/instruments.module.js';
import { MethodsModule } from '../methods/methods.module.js';
import { AddControlLine } from './add-control-line.js';
import { AddControlPull } from './add-control-pull.js';
import { CastDoubt } from './cast-doubt.js';
import { ControlPullsController } from './control-pulls.controller.js';
import { ControlPullsReadModel } from './control-pulls.read-model.js';
import { ControlPullsStore } from './control-pulls.store.js';
import { StrikeControlPull } from './strike-control-pull.js';

@Module({
  imports: [AccountsModule, FindingsModule, InstrumentsModule, MethodsModule],
  controllers: [ControlPullsController],
  providers: [AddControlLine, AddControlPull, CastDoubt, StrikeControlPull, ControlPullsReadModel, ControlPullsStore],
  exports: [ControlPullsReadModel],
})
export class ControlPullsModule {}
