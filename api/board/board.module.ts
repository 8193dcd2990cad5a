/**
 * The board of an edition: what each entry still lacks, what stands in the way of the next step, and the closing.
 * States moved: open → closed. Editors look and close.
 * Standings are computed from accepted submissions whenever they are asked for; a release freezes them.
 */
import { Module } from '@nestjs/common';
import { EditionsModule } from '../editions/editions.module.js';
import { ReleasesModule } from '../releases/releases.module.js';
import { SubmissionsModule } from '../submissions/submissions.module.js';
import { BoardController } from './board.controller.js';
import { CloseEdition } from './close-edition.js';
import { PlanMoreTests } from './plan-more-tests.js';

@Module({
  imports: [EditionsModule, ReleasesModule, SubmissionsModule],
  controllers: [BoardController],
  providers: [CloseEdition, PlanMoreTests],
})
export class BoardModule {}
