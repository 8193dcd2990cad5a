/**
 * Photos: pictures of a break, a label or an apparatus, kept as evidence; nobody without a role for them ever sees one, and none is published.
 * States: one stands until it is taken away; then its picture is gone, and that it was there stays on record.
 * A tester adds to and sees the own submissions, until they are decided; reviewers and editors see all but those of drafts; editors add
 * pictures of spools. Who adds or opens what shows a label is known to have read it.
 * A picture is kept without what the camera wrote into it (place, time, device), and never larger than a screen needs.
 */
import { Module } from '@nestjs/common';
import { CatalogueModule } from '../catalogue/catalogue.module.js';
import { SubmissionsModule } from '../submissions/submissions.module.js';
import { AddPhoto } from './add-photo.js';
import { PhotosController } from './photos.controller.js';
import { PhotosReadModel } from './photos.read-model.js';
import { PhotosStore } from './photos.store.js';
import { RemovePhoto } from './remove-photo.js';

@Module({
  imports: [CatalogueModule, SubmissionsModule],
  controllers: [PhotosController],
  providers: [AddPhoto, RemovePhoto, PhotosReadModel, PhotosStore],
})
export class PhotosModule {}
