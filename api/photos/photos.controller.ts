import { Controller, Delete, Get, Param, Post, Query, Req, Res } from '@nestjs/common';
import { ApiBody, ApiConsumes } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { z } from 'zod';
import { LARGEST_PHOTO_BYTES, sizeWords } from '../contract/body-sizes.js';
import { normaliseBlindCode } from '../contract/blind-code.js';
import * as schemas from '../contract/endpoints/photos.js';
import { FileStore } from '../platform/file-store/file-store.js';
import { CurrentActor } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { SubmissionViewsReadModel } from '../submissions/views/submission-views.read-model.js';
import { AddPhoto } from './add-photo.js';
import { noPhoto, pathOf } from './photo.js';
import { PhotosReadModel } from './photos.read-model.js';
import { readPicture } from './read-picture.js';
import { RemovePhoto } from './remove-photo.js';

const PICTURES = ['image/jpeg', 'image/png', 'image/webp', 'multipart/form-data'] as const;
const A_PICTURE = {
  description: `A picture of at most ${sizeWords(LARGEST_PHOTO_BYTES)}`,
  schema: { type: 'string', format: 'binary' },
} as const;

@Controller('v1')
export class PhotosController {
  constructor(
    private readonly views: SubmissionViewsReadModel,
    private readonly add: AddPhoto,
    private readonly remove: RemovePhoto,
    private readonly photos: PhotosReadModel,
    private readonly files: FileStore,
  ) {}

  @Post('submissions/:reference/photos')
  @ApiConsumes(...PICTURES)
  @ApiBody(A_PICTURE)
  @Endpoint({
    summary: 'Adds a picture, of a break for instance, to an own submission that is not decided.',
    allow: ['tester'],
    status: 201,
    answer: schemas.photosResponse,
    takes: 'files',
  })
  async postSubmissionPhoto(
    @CurrentActor() actor: Actor,
    @Param('reference') reference: string,
    @Query({ schema: schemas.submissionPhotoQuery }) query: z.infer<typeof schemas.submissionPhotoQuery>,
    @Req() request: FastifyRequest,
  ) {
    await this.views.one(actor, reference);
    await this.add.run(actor, { reference }, { ...query, bytes: await readPicture(request) });
    return this.listOf(await this.photos.ofSubmission(actor, reference));
  }

  @Get('submissions/:reference/photos')
  @Endpoint({
    summary: 'Pictures of a submission; testers see their own alone.',
    allow: ['tester', 'reviewer', 'editor'],
    answer: schemas.photosResponse,
  })
  async getSubmissionPhotos(@CurrentActor() actor: Actor, @Param('reference') reference: string) {
    await this.views.one(actor, reference);
    return this.listOf(await this.photos.ofSubmission(actor, reference));
  }

  @Post('catalogue/spools/:code/photos')
  @ApiConsumes(...PICTURES)
  @ApiBody(A_PICTURE)
  @Endpoint({
    summary: 'Adds a picture of a spool, of its label for instance.',
    allow: ['editor'],
    status: 201,
    answer: schemas.photosResponse,
    takes: 'files',
  })
  async postSpoolPhoto(
    @CurrentActor() actor: Actor,
    @Param('code') code: string,
    @Query({ schema: schemas.spoolPhotoQuery }) query: z.infer<typeof schemas.spoolPhotoQuery>,
    @Req() request: FastifyRequest,
  ) {
    await this.add.run(actor, { code }, { ...query, bytes: await readPicture(request) });
    return this.getSpoolPhotos(actor, code);
  }

  @Get('catalogue/spools/:code/photos')
  @Endpoint({ summary: 'Pictures of a spool.', allow: ['reviewer', 'editor'], answer: schemas.photosResponse })
  async getSpoolPhotos(@CurrentActor() actor: Actor, @Param('code') code: string) {
    return this.listOf(await this.photos.ofSpool(actor, normaliseBlindCode(code)));
  }

  @Get('photos/:id')
  @Endpoint({
    summary: 'A picture, as JPEG. Whoever opens one that shows a label has read it.',
    allow: ['tester', 'reviewer', 'editor'],
    answer: null,
    mediaType: 'image/jpeg',
  })
  async getPhoto(
    @CurrentActor() actor: Actor,
    @Param('id', { schema: schemas.photoParameter }) id: string,
    @Res() reply: FastifyReply,
  ): Promise<void> {
    const photo = await this.photos.open(actor, id);
    const bytes = photo && (await this.files.read(pathOf(photo.digest)));
    if (!bytes) throw noPhoto(id);
    void reply
      .header('Content-Type', 'image/jpeg')
      .header('Cache-Control', 'private, no-store')
      .header('Content-Security-Policy', "default-src 'none'")
      .send(bytes);
  }

  @Delete('photos/:id')
  @Endpoint({
    summary: 'Takes a picture away: its tester until the submission is decided, an editor always.',
    allow: ['tester', 'editor'],
    status: 204,
    answer: null,
  })
  deletePhoto(@CurrentActor() actor: Actor, @Param('id', { schema: schemas.photoParameter }) id: string): Promise<void> {
    return this.remove.run(actor, id);
  }

  private listOf = (items: readonly schemas.Photo[]) => ({ items: [...items], nextCursor: null });
}
