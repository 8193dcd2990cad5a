/**
 * Decisions: what is on record of the second person's work on submissions. Reviews writes it; submissions, proposals and releases read it.
 * Reviews, specimens set aside, judgements and withdrawals are append-only; a question is answered once; a claim ends by itself.
 */
import { Module } from '@nestjs/common';
import { DecisionsReadModel } from './decisions.read-model.js';
import { DecisionsStore } from './decisions.store.js';

@Module({ providers: [DecisionsReadModel, DecisionsStore], exports: [DecisionsReadModel, DecisionsStore] })
export class DecisionsModule {}
