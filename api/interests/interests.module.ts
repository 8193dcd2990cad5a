/**
 * Declared interests: ties of people to makers. States: none; a tie once declared stays.
 * Everybody declares and reads their own. It flags their submissions, and bars them from reviews and changes of entries of that maker.
 */
import { Module } from '@nestjs/common';
import { CatalogueModule } from '../catalogue/catalogue.module.js';
import { DeclareInterest } from './declare-interest.js';
import { InterestsController } from './interests.controller.js';
import { InterestsReadModel } from './interests.read-model.js';
import { InterestsStore } from './interests.store.js';

@Module({
  imports: [CatalogueModule],
  controllers: [InterestsController],
  providers: [DeclareInterest, InterestsReadModel, InterestsStore],
  exports: [InterestsReadModel],
})
export class InterestsModule {}
