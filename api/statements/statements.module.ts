/**
 * Purpose: what the house says in words: who it is, caveats that no figure settles, replies of makers.
 * States: what is said stands until it is superseded or ended with a reason; it never changes.
 * Editors and admins say who the house is, which has to be complete before an edition is first published; editors write caveats and
 * enter replies. What stands goes into the next release.
 */
import { Module } from '@nestjs/common';
import { AccountsModule } from '../accounts/accounts.module.js';
import { CatalogueModule } from '../catalogue/catalogue.module.js';
import { EditionsModule } from '../editions/editions.module.js';
import { EndRemark } from './end-remark.js';
import { Remark } from './remark.js';
import { StateHouse } from './state-house.js';
import { StatementsController } from './statements.controller.js';
import { StatementsReadModel } from './statements.read-model.js';
import { StatementsStore } from './statements.store.js';

@Module({
  imports: [AccountsModule, CatalogueModule, EditionsModule],
  controllers: [StatementsController],
  providers: [EndRemark, Remark, StateHouse, StatementsReadModel, StatementsStore],
  exports: [StatementsReadModel],
})
export class StatementsModule {}
