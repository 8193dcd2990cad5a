import { Controller, Get, Req, Res } from '@nestjs/common';
import { ApiParam } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { editionFileSchema, manifestSchema, releaseSignatureSchema } from '../contract/documents/release-documents.js';
import { releasesResponse, signingKeysResponse } from '../contract/endpoints/public-api.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { PublishedReleases } from '../releases/published-releases.read-model.js';
import { PublishedFiles } from './published-files.js';
import { sendAt } from './send-at.js';

/** Of a part of an address that leads to a stored file and is read as a whole. */
const TEXT = { type: 'string' } as const;
/** As the list of releases has it. */
const REVISION = { type: 'integer', minimum: 1 } as const;

/** Releases and editions with their files, as stored, and the keys that they are signed with. */
@Controller('v1')
export class PublishedReleasesController {
  constructor(
    private readonly releases: PublishedReleases,
    private readonly files: PublishedFiles,
  ) {}

  @Get('releases')
  @Endpoint({ summary: 'All published releases, newest edition first.', allow: 'anyone', answer: releasesResponse })
  getReleases() {
    return { items: this.releases.list(), nextCursor: null };
  }

  @Get('releases/:edition/:revision/manifest.json')
  @ApiParam({ name: 'edition', schema: TEXT })
  @ApiParam({ name: 'revision', schema: REVISION })
  @Endpoint({ summary: 'Manifest of a release: every file with its digest.', allow: 'anyone', answer: null, stored: manifestSchema })
  getManifest(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return sendAt(this.files, request, reply);
  }

  @Get('releases/:edition/:revision/signature.json')
  @ApiParam({ name: 'edition', schema: TEXT })
  @ApiParam({ name: 'revision', schema: REVISION })
  @Endpoint({
    summary: 'Signature of a release: Ed25519 over its manifest.',
    allow: 'anyone',
    answer: null,
    stored: releaseSignatureSchema,
  })
  getSignature(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return sendAt(this.files, request, reply);
  }

  @Get('releases/:edition/:revision/*')
  @ApiParam({ name: 'edition', schema: TEXT })
  @ApiParam({ name: 'revision', schema: REVISION })
  @ApiParam({ name: 'path', description: 'Path as the manifest lists it', schema: TEXT })
  @Endpoint({
    summary: 'A file of a release, as stored: bundle.json, documents/…, csv/….',
    allow: 'anyone',
    answer: null,
    mediaType: 'application/octet-stream',
  })
  getReleaseFile(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return sendAt(this.files, request, reply);
  }

  @Get('signing-keys')
  @Endpoint({ summary: 'Public keys that releases are signed with, newest first.', allow: 'anyone', answer: signingKeysResponse })
  getSigningKeys() {
    return { items: this.releases.signingKeys(), nextCursor: null };
  }

  @Get('editions')
  @Endpoint({ summary: 'Published editions: the current release of each.', allow: 'anyone', answer: releasesResponse })
  getEditions() {
    return { items: this.releases.list().filter(({ status }) => status === 'published'), nextCursor: null };
  }

  @Get('editions/:edition')
  @ApiParam({ name: 'edition', schema: TEXT })
  @Endpoint({
    summary: 'An edition as published: overall standings, scheme, evidence; of one with several divisions, what they are.',
    allow: 'anyone',
    answer: null,
    stored: editionFileSchema,
  })
  getEdition(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return sendAt(this.files, request, reply);
  }

  @Get('editions/:edition/standings')
  @ApiParam({ name: 'edition', schema: TEXT })
  @Endpoint({
    summary: 'Overall standings, with the edition they belong to; of one with several divisions, what they are.',
    allow: 'anyone',
    answer: null,
    stored: editionFileSchema,
  })
  getOverallStandings(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return sendAt(this.files, request, reply);
  }
}
