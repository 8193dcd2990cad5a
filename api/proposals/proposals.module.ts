/**
 * Proposals: what takes two persons, a withdrawal of a result and a re-identification of a spool.
 * States: open → carried out | declined | called off.
 * Reviewers and editors propose; an editor who did not make the proposal carries it out, where it belongs (reviews, catalogue), or declines it;
 * who made it calls it off. What could never be carried out is refused when it is made.
 * A proposal never changes; how it ends stands beside it.
 */
import { Module } from '@nestjs/common';
import { AccountsModule } from '../accounts/accounts.module.js';
import { EndProposal } from './end-proposal.js';
import { Propose } from './propose.js';
import { ProposalsController } from './proposals.controller.js';
import { ProposalsReadModel } from './proposals.read-model.js';
import { ProposalsStore } from './proposals.store.js';

@Module({
  imports: [AccountsModule],
  controllers: [ProposalsController],
  providers: [EndProposal, Propose, ProposalsReadModel, ProposalsStore],
  exports: [ProposalsReadModel],
})
export class ProposalsModule {}
