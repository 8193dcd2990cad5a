/**
 * Proposals: what takes two persons, a withdrawal of a result and a re-identification of a spool.
 * States: open, carried out.
 * Reviewers and editors propose; an editor who did not make the proposal carries it out, where it belongs (reviews, catalogue).
 * A proposal never changes; one that nobody carries out has no effect.
 */
import { Module } from '@nestjs/common';
import { Propose } from './propose.js';
import { ProposalsController } from './proposals.controller.js';
import { ProposalsReadModel } from './proposals.read-model.js';
import { ProposalsStore } from './proposals.store.js';

@Module({ controllers: [ProposalsController], providers: [Propose, ProposalsReadModel, ProposalsStore], exports: [ProposalsReadModel] })
export class ProposalsModule {}
