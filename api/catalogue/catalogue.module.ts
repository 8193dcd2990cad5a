/**
 * Makers, their lines and variants with the claims on the label, and the spools on the shelf with their blind codes.
 * States: in use, retired; slugs and blind codes never change, a re-identification (see proposals) is added and never taken back.
 * A row is corrected while no submission rests on it; then it is superseded with a reason, and what it said stays readable beside it.
 * Editors write. Reviewers and admins read lines and variants, anybody signed in reads makers.
 * Only editors read what a blind code stands for; testers see code and length.
 */
import { Module } from '@nestjs/common';
import { AccountsModule } from '../accounts/accounts.module.js';
import { AddClaim } from './variants/add-claim.js';
import { AddLine } from './lines/add-line.js';
import { AddMaker } from './makers/add-maker.js';
import { AddSpool } from './spools/add-spool.js';
import { AddVariant } from './variants/add-variant.js';
import { CataloguePages } from './catalogue-pages.read-model.js';
import { CatalogueReadModel } from './catalogue.read-model.js';
import { CatalogueStore } from './catalogue.store.js';
import { ChangeLine } from './lines/change-line.js';
import { ChangeMaker } from './makers/change-maker.js';
import { ChangeSpool } from './spools/change-spool.js';
import { Retire } from './retire.js';
import { Succeed } from './succeed.js';
import { SuccessionsController } from './successions.controller.js';
import { SuccessionsReadModel } from './successions.read-model.js';
import { WhatRests } from './what-rests.read-model.js';
import { ChangeVariant } from './variants/change-variant.js';
import { CorrectClaim } from './variants/correct-claim.js';
import { LinesController } from './lines/lines.controller.js';
import { MakersController } from './makers/makers.controller.js';
import { SpoolsController } from './spools/spools.controller.js';
import { SpoolRows } from './spools/spool-rows.read-model.js';
import { SpoolsReadModel } from './spools/spools.read-model.js';
import { SpoolsStore } from './spools/spools.store.js';
import { VariantsController } from './variants/variants.controller.js';

@Module({
  imports: [AccountsModule],
  controllers: [MakersController, LinesController, VariantsController, SpoolsController, SuccessionsController],
  providers: [
    AddClaim,
    AddLine,
    AddMaker,
    AddSpool,
    AddVariant,
    CataloguePages,
    CatalogueReadModel,
    CatalogueStore,
    ChangeLine,
    ChangeMaker,
    ChangeSpool,
    ChangeVariant,
    CorrectClaim,
    Retire,
    Succeed,
    SuccessionsReadModel,
    WhatRests,
    SpoolRows,
    SpoolsReadModel,
    SpoolsStore,
  ],
  exports: [CatalogueReadModel, SpoolRows, SpoolsReadModel, SpoolsStore, SuccessionsReadModel],
})
export class CatalogueModule {}
