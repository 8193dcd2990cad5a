import { Controller, Get, Param, Query, Req, Res } from '@nestjs/common';
import { ApiParam } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { problemsAnswer } from '../error-catalogue.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { PublishedReleases } from '../releases/published-releases.read-model.js';
import type { KnownRelease } from '../releases/published-releases.read-model.js';
import { provenanceOf } from './provenance.js';
import { provenanceQuery, provenanceResponse } from '../contract/documents/provenance.js';
import {
  problemsResponse,
  publishedChecksResponse,
  publishedLinesResponse,
  publishedMakersResponse,
  releasesResponse,
  signingKeysResponse,
  variantHistoryResponse,
  variantSpecimensResponse,
} from '../contract/endpoints/public-api.js';
import {
  editionFileSchema,
  manifestSchema,
  methodDocumentSchema,
  releaseSignatureSchema,
  variantDocumentSchema,
} from '../contract/documents/release-documents.js';
import type { CatalogueDocument, VariantDocument } from '../contract/documents/release-documents.js';
import type { RigsDocument } from '../contract/documents/rigs-document.js';
import { PublishedFiles } from './published-files.js';
import { sendJson, sendPublished } from './serve-published.js';

/** Of a part of an address that leads to a stored file and is read as a whole. */
const TEXT = { type: 'string' } as const;
const notFound = (what: string) => new Problem(platformProblems['request/not-found'], `Nothing published is called ${what}.`);

@Controller('v1')
export class PublicApiController {
  constructor(
    private readonly releases: PublishedReleases,
    private readonly files: PublishedFiles,
  ) {}

  @Get('releases')
  @Endpoint({ summary: 'All published releases, newest edition first.', allow: 'anyone', answer: releasesResponse })
  getReleases() {
    return { items: this.releases.list(), nextCursor: null };
  }

  @Get('editions')
  @Endpoint({ summary: 'Published editions: the current release of each.', allow: 'anyone', answer: releasesResponse })
  getEditions() {
    return { items: this.releases.list().filter(({ status }) => status === 'published'), nextCursor: null };
  }

  @Get('releases/:edition/:revision/manifest.json')
  @ApiParam({ name: 'edition', schema: TEXT })
  @ApiParam({ name: 'revision', schema: TEXT })
  @Endpoint({ summary: 'Manifest of a release: every file with its digest.', allow: 'anyone', answer: null, stored: manifestSchema })
  getManifest(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return this.send(request, reply);
  }

  @Get('releases/:edition/:revision/signature.json')
  @ApiParam({ name: 'edition', schema: TEXT })
  @ApiParam({ name: 'revision', schema: TEXT })
  @Endpoint({
    summary: 'Signature of a release: Ed25519 over its manifest.',
    allow: 'anyone',
    answer: null,
    stored: releaseSignatureSchema,
  })
  getSignature(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return this.send(request, reply);
  }

  @Get('signing-keys')
  @Endpoint({ summary: 'Public keys that releases are signed with, newest first.', allow: 'anyone', answer: signingKeysResponse })
  getSigningKeys() {
    return { items: this.releases.signingKeys(), nextCursor: null };
  }

  @Get('releases/:edition/:revision/*')
  @ApiParam({ name: 'edition', schema: TEXT })
  @ApiParam({ name: 'revision', schema: TEXT })
  @ApiParam({ name: 'path', description: 'Path as the manifest lists it', schema: { type: 'string' } })
  @Endpoint({
    summary: 'A file of a release, as stored: bundle.json, documents/…, csv/….',
    allow: 'anyone',
    answer: null,
    mediaType: 'application/octet-stream',
  })
  getReleaseFile(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return this.send(request, reply);
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
    return this.send(request, reply);
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
    return this.send(request, reply);
  }

  @Get('editions/:edition/variants/:variant/provenance')
  @Endpoint({
    summary: 'Where the figures of a variant come from: submissions, specimens, readings as entered, instruments, certificates.',
    allow: 'anyone',
    answer: provenanceResponse,
  })
  async getProvenance(
    @Param('edition') edition: string,
    @Param('variant') variant: string,
    @Query({ schema: provenanceQuery }) { quantity }: { quantity?: string },
  ) {
    const release = this.current(edition);
    const document = await this.releases.document<VariantDocument>(release, `documents/variants/${variant}.json`);
    if (!document) throw notFound(variant);
    const rigs = await this.releases.document<RigsDocument>(release, 'documents/rigs.json');
    return provenanceOf(release, document, rigs?.instruments ?? [], quantity);
  }

  @Get('editions/:edition/variants/:variant')
  @ApiParam({ name: 'edition', schema: TEXT })
  @ApiParam({ name: 'variant', schema: TEXT })
  @Endpoint({
    summary: 'A variant in an edition: places, figures, claims, every specimen, history.',
    allow: 'anyone',
    answer: null,
    stored: variantDocumentSchema,
  })
  getEditionVariant(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return this.send(request, reply);
  }

  @Get('variants/:variant')
  @ApiParam({ name: 'variant', schema: TEXT })
  @Endpoint({ summary: 'A variant in the newest edition that has it.', allow: 'anyone', answer: null, stored: variantDocumentSchema })
  getVariant(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return this.send(request, reply);
  }

  @Get('variants/:variant/history')
  @Endpoint({ summary: 'A variant over all editions, oldest first.', allow: 'anyone', answer: null, stored: variantHistoryResponse })
  async getVariantHistory(@Param('variant') variant: string, @Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    const document = await this.releases.document<VariantDocument>(this.newestWith(variant), `documents/variants/${variant}.json`);
    await sendJson(request, reply, { variant: document?.variant, history: document?.history });
  }

  @Get('variants/:variant/specimens')
  @Endpoint({
    summary: 'Every submission and specimen behind the figures of a variant.',
    allow: 'anyone',
    answer: null,
    stored: variantSpecimensResponse,
  })
  async getVariantSpecimens(@Param('variant') variant: string, @Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    const document = await this.releases.document<VariantDocument>(this.newestWith(variant), `documents/variants/${variant}.json`);
    await sendJson(request, reply, { variant: document?.variant, submissions: document?.submissions });
  }

  @Get('makers')
  @Endpoint({
    summary: 'Makers with their lines, as the newest edition names them.',
    allow: 'anyone',
    answer: null,
    stored: publishedMakersResponse,
  })
  async getMakers(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    const { makers } = await this.catalogue();
    await sendJson(request, reply, { items: makers, nextCursor: null });
  }

  @Get('lines')
  @Endpoint({
    summary: 'Lines with their variants, as the newest edition names them.',
    allow: 'anyone',
    answer: null,
    stored: publishedLinesResponse,
  })
  async getLines(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    const { makers } = await this.catalogue();
    const items = makers.flatMap(({ slug, name, lines }) => lines.map((line) => ({ maker: { slug, name }, ...line })));
    await sendJson(request, reply, { items, nextCursor: null });
  }

  @Get('checks')
  @Endpoint({
    summary: 'The automatic checks, as the newest edition pinned them.',
    allow: 'anyone',
    answer: null,
    stored: publishedChecksResponse,
  })
  async getChecks(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    await sendJson(request, reply, { items: (await this.catalogue()).checks, nextCursor: null });
  }

  @Get('methods/:method/versions/:number')
  @ApiParam({ name: 'method', schema: TEXT })
  @ApiParam({ name: 'number', schema: TEXT })
  @Endpoint({ summary: 'One version of a method, as published.', allow: 'anyone', answer: null, stored: methodDocumentSchema })
  getMethodVersion(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return this.send(request, reply);
  }

  @Get('problems')
  @Endpoint({ summary: 'Every kind of problem that the API answers with.', allow: 'anyone', answer: problemsResponse })
  getProblems() {
    return problemsAnswer();
  }

  private async send(request: FastifyRequest, reply: FastifyReply): Promise<void> {
    const [path = ''] = request.url.split('?');
    const found = this.files.at(path);
    if (!found) throw notFound(path);
    await sendPublished(request, reply, this.files, found);
  }

  private current(edition: string): KnownRelease {
    const release = this.releases.find(edition);
    if (!release) throw notFound(`edition ${edition}`);
    return release;
  }

  private newestWith(variant: string): KnownRelease {
    const release = this.releases.newest(`documents/variants/${variant}.json`);
    if (!release) throw notFound(variant);
    return release;
  }

  private async catalogue(): Promise<CatalogueDocument> {
    const release = this.releases.newest();
    const document = release && (await this.releases.document<CatalogueDocument>(release, 'documents/catalogue.json'));
    if (!document) throw notFound('any edition');
    return document;
  }
}
