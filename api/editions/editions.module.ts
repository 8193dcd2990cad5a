/**
 * Purpose: ranking exercises. States: planned → open → closed → published.
 * Editors plan, enter, open, close and exclude; opening pins scheme, method versions and checks and seals the key of blind codes.
 * Standings are computed from accepted submissions whenever they are asked for; a release freezes them.
 */
import { Module } from '@nestjs/common';
import { AccountsModule } from '../accounts/accounts.module.js';
import { CatalogueModule } from '../catalogue/catalogue.module.js';
import { ControlPullsModule } from '../control-pulls/control-pulls.module.js';
import { InstrumentsModule } from '../instruments/instruments.module.js';
import { MethodsModule } from '../methods/methods.module.js';
import { SubmissionsModule } from '../submissions/submissions.module.js';
import { AddScheme } from './add-scheme.js';
import { AddEntries } from './add-entries.js';
import { CloseEdition } from './close-edition.js';
import { EditionsController } from './editions.controller.js';
import { RoundRobinsModule } from '../round-robins/round-robins.module.js';
import { RetestsModule } from '../retests/retests.module.js';
import { EditionsReadModel } from './editions.read-model.js';
import { EditionsStore } from './editions.store.js';
import { ExcludeEntry } from './exclude-entry.js';
import { EditionEvidenceReadModel } from './edition-evidence.read-model.js';
import { OpenEdition } from './open-edition.js';
import { PlanEdition } from './plan-edition.js';
import { PreviewEdition } from './preview-edition.js';

@Module({
  imports: [
    AccountsModule,
    CatalogueModule,
    ControlPullsModule,
    InstrumentsModule,
    MethodsModule,
    RetestsModule,
    RoundRobinsModule,
    SubmissionsModule,
  ],
  controllers: [EditionsController],
  providers: [
    AddScheme,
    AddEntries,
    CloseEdition,
    EditionsReadModel,
    EditionsStore,
    ExcludeEntry,
    EditionEvidenceReadModel,
    OpenEdition,
    PlanEdition,
    PreviewEdition,
  ],
  exports: [EditionsReadModel, EditionEvidenceReadModel],
})
export class EditionsModule {}
