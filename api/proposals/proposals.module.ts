/**
 * Proposals: what takes two persons, a withdrawal of a result and a re-identification of a spool.
 * States: open → carried out | declined | called off.
 * Reviewers and editors propose; an editor who did not make the proposal carries it out (a withdrawal in reviews), or declines it;
 * who made it calls it off. Nobody re-identifies a spool that they tested. What could never be carried out is refused when it is made.
 * A proposal never changes; how it ends stands beside it.
 */
import { Module } from '@nestjs/common';
import { AccountsModule } from '../accounts/accounts.module.js';
import { CatalogueModule } from '../catalogue/catalogue.module.js';
import { DecisionsModule } from '../decisions/decisions.module.js';
import { SubmissionsModule } from '../submissions/submissions.module.js';
import { EndProposal } from './end-proposal.js';
import { Propose } from './propose.js';
import { ProposalsController } from './proposals.controller.js';
import { ProposalsReadModel } from './proposals.read-model.js';
import { ProposalsStore } from './proposals.store.js';
import { ReidentificationsController } from './reidentifications.controller.js';
import { ReidentifySpool } from './reidentify-spool.js';

@Module({
  imports: [AccountsModule, CatalogueModule, DecisionsModule, SubmissionsModule],
  controllers: [ProposalsController, ReidentificationsController],
  providers: [EndProposal, Propose, ProposalsReadModel, ProposalsStore, ReidentifySpool],
  exports: [ProposalsReadModel],
})
export class ProposalsModule {}
