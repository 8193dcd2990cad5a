/**
 * Purpose: what anyone may read. Reads published releases only; a release carries its own copy of every name it shows.
 * What comes from a release is sent as stored bytes with its digest as ETag. Anyone may read; nobody writes here.
 */
import { Module } from '@nestjs/common';
import { ReleasesModule } from '../releases/releases.module.js';
import { EditionDocumentsController } from './edition-documents.controller.js';
import { PublicApiController } from './public-api.controller.js';

@Module({ imports: [ReleasesModule], controllers: [EditionDocumentsController, PublicApiController] })
export class PublicApiModule {}
