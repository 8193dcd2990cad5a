/**
 * Round robins: several testers pull the same spools by the same method, to see how well they agree.
 * States: planned → open → closed.
 * Editors plan, open and close; the testers of the plan hand in, each spool once; until it is closed a tester sees the own readings alone.
 * Readings never change and enter no result; the release carries the report, testers by number.
 */
import { Module } from '@nestjs/common';
import { AccountsModule } from '../accounts/accounts.module.js';
import { CatalogueModule } from '../catalogue/catalogue.module.js';
import { InstrumentsModule } from '../instruments/instruments.module.js';
import { MethodsModule } from '../methods/methods.module.js';
import { HandInCell } from './hand-in-cell.js';
import { PlanRoundRobin } from './plan-round-robin.js';
import { RoundRobinsController } from './round-robins.controller.js';
import { RoundRobinsReadModel } from './round-robins.read-model.js';
import { RoundRobinsStore } from './round-robins.store.js';

@Module({
  imports: [AccountsModule, CatalogueModule, InstrumentsModule, MethodsModule],
  controllers: [RoundRobinsController],
  providers: [HandInCell, PlanRoundRobin, RoundRobinsReadModel, RoundRobinsStore],
  exports: [RoundRobinsReadModel],
})
export class RoundRobinsModule {}
