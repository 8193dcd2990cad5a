/**
 * Purpose: what anyone may read. Reads published releases only; a release carries its own copy of every name it shows.
 * Which digest stands at which address is kept in memory; bytes are sent as stored, with their digest as ETag. Nobody writes here.
 */
import { Module } from '@nestjs/common';
import { ReleasesModule } from '../releases/releases.module.js';
import { ChangesController } from './changes.controller.js';
import { EditionDocumentsController } from './edition-documents.controller.js';
import { PublishedFiles } from './published-files.js';
import { PublishedCatalogueController } from './published-catalogue.controller.js';
import { PublishedReleasesController } from './published-releases.controller.js';
import { PublishedVariantsController } from './published-variants.controller.js';
import { ResultsController } from './results.controller.js';
import { SchemasController } from './schemas.controller.js';
import { StandingsController } from './standings.controller.js';

@Module({
  imports: [ReleasesModule],
  controllers: [
    ChangesController,
    EditionDocumentsController,
    PublishedCatalogueController,
    PublishedReleasesController,
    PublishedVariantsController,
    ResultsController,
    SchemasController,
    StandingsController,
  ],
  providers: [PublishedFiles],
  exports: [PublishedFiles],
})
export class PublicApiModule {}
