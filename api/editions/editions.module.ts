/**
 * Purpose: ranking exercises. States: planned → open → closed → published.
 * Editors plan, enter, open, exclude, and put entries into divisions; until it opens they change it or take it away, while it is open they amend it with a reason; opening pins scheme, method versions and checks and seals the key of blind codes.
 * What stands in an edition, and its closing, is the board's.
 */
import { Module } from '@nestjs/common';
import { CatalogueModule } from '../catalogue/catalogue.module.js';
import { InterestsModule } from '../interests/interests.module.js';
import { MethodsModule } from '../methods/methods.module.js';
import { AddEntries } from './add-entries.js';
import { AddScheme } from './add-scheme.js';
import { AmendEdition } from './amend-edition.js';
import { ChangeEdition } from './change-edition.js';
import { EditionEntries } from './edition-entries.read-model.js';
import { EditionRows } from './edition-rows.read-model.js';
import { EditionParts } from './edition-parts.read-model.js';
import { EditionsController } from './editions.controller.js';
import { EditionsReadModel } from './editions.read-model.js';
import { EditionsStore } from './editions.store.js';
import { EntryToChange } from './entry-to-change.js';
import { ExcludeEntry } from './exclude-entry.js';
import { EditionObstacles } from './obstacles.read-model.js';
import { OpenEdition } from './open-edition.js';
import { OverruleDivision } from './overrule-division.js';
import { PlanEdition } from './plan-edition.js';

@Module({
  imports: [CatalogueModule, InterestsModule, MethodsModule],
  controllers: [EditionsController],
  providers: [
    AddEntries,
    AddScheme,
    AmendEdition,
    ChangeEdition,
    EditionEntries,
    EditionObstacles,
    EditionParts,
    EditionRows,
    EditionsReadModel,
    EditionsStore,
    EntryToChange,
    ExcludeEntry,
    OpenEdition,
    OverruleDivision,
    PlanEdition,
  ],
  exports: [EditionObstacles, EditionRows, EditionsReadModel, EditionsStore],
})
export class EditionsModule {}
