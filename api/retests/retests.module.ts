/**
 * Re-tests: accepted results drawn at random come back as spools of new codes, to another tester on another rig.
 * States: an edition has no draw, or one; a drawn result is open until an accepted submission of its new code is there.
 * Editors draw, while the edition is open, by a seed that was fixed at its opening; testers see spools like any other.
 * What is found again enters no value: the release tells how far it differs, and the model of the bench what testers and rigs differ by.
 */
import { Module } from '@nestjs/common';
import { CatalogueModule } from '../catalogue/catalogue.module.js';
import { EditionsModule } from '../editions/editions.module.js';
import { SubmissionsModule } from '../submissions/submissions.module.js';
import { DrawRetests } from './draw-retests.js';
import { RetestsController } from './retests.controller.js';
import { RetestsReadModel } from './retests.read-model.js';
import { RetestsStore } from './retests.store.js';

@Module({
  imports: [CatalogueModule, EditionsModule, SubmissionsModule],
  controllers: [RetestsController],
  providers: [DrawRetests, RetestsReadModel, RetestsStore],
  exports: [RetestsReadModel],
})
export class RetestsModule {}
