/**
 * The board of an edition: what each entry still lacks, what stands in the way of the next step, and the closing.
 * States moved: open → closed. Editors look and close.
 * Standings are computed from accepted submissions whenever they are asked for; a release freezes them.
 */
import { Module } from '@nestjs/common';
import { CatalogueModule } from '../catalogue/catalogue.module.js';
import { ControlPullsModule } from '../control-pulls/control-pulls.module.js';
import { EditionsModule } from '../editions/editions.module.js';
import { InstrumentsModule } from '../instruments/instruments.module.js';
import { RetestsModule } from '../retests/retests.module.js';
import { RoundRobinsModule } from '../round-robins/round-robins.module.js';
import { SubmissionsModule } from '../submissions/submissions.module.js';
import { BoardController } from './board.controller.js';
import { CloseEdition } from './close-edition.js';
import { EditionEvidenceReadModel } from './edition-evidence.read-model.js';
import { PlanMoreTests } from './plan-more-tests.js';
import { SupersededReadModel } from './superseded.read-model.js';

@Module({
  imports: [CatalogueModule, ControlPullsModule, EditionsModule, InstrumentsModule, RetestsModule, RoundRobinsModule, SubmissionsModule],
  controllers: [BoardController],
  providers: [CloseEdition, EditionEvidenceReadModel, PlanMoreTests, SupersededReadModel],
  exports: [EditionEvidenceReadModel],
})
export class BoardModule {}
