/**
 * Assignments: who is asked to pull which spool by which method, how many specimens, until when.
 * States: one stands until it is taken back; it is done once its tester has handed the spool in by that method.
 * Editors give and take back, until the edition closes; a tester sees the own ones, by blind code alone.
 * They bind nobody: whatever a tester hands in is taken as ever.
 */
import { Module } from '@nestjs/common';
import { AccountsModule } from '../accounts/accounts.module.js';
import { CatalogueModule } from '../catalogue/catalogue.module.js';
import { EditionsModule } from '../editions/editions.module.js';
import { MethodsModule } from '../methods/methods.module.js';
import { SubmissionsModule } from '../submissions/submissions.module.js';
import { Assign } from './assign.js';
import { AssignmentsController } from './assignments.controller.js';
import { AssignmentsReadModel } from './assignments.read-model.js';
import { AssignmentsStore } from './assignments.store.js';

@Module({
  imports: [AccountsModule, CatalogueModule, EditionsModule, MethodsModule, SubmissionsModule],
  controllers: [AssignmentsController],
  providers: [Assign, AssignmentsReadModel, AssignmentsStore],
  exports: [AssignmentsReadModel],
})
export class AssignmentsModule {}
