import { Controller, Get, Header, Param, Query, Req, Res } from '@nestjs/common';
import { ApiParam } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { problemsAnswer } from '../error-catalogue.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { sha256 } from '../platform/identifiers/identifiers.js';
import { ReleasesReadModel } from '../releases/releases.read-model.js';
import type { PublishedRelease } from '../releases/releases.read-model.js';
import { provenanceOf } from './provenance.js';
import { provenanceQuery, provenanceResponse } from '../contract/documents/provenance.js';
import { problemsResponse, releasesResponse, signingKeysResponse, standingsQuery } from '../contract/endpoints/public-api.js';
import type { StandingsQuery } from '../contract/endpoints/public-api.js';
import type { CatalogueDocument, CategoryDocument, CategoryRow, VariantDocument } from '../contract/documents/release-documents.js';
import type { RigsDocument } from '../contract/documents/rigs-document.js';
import { sendStoredBytes } from './stored-bytes.js';

const JSON_TYPE = 'application/json';
/** What is made for the asking carries it too, as stored bytes do. */
const FROM_ANY_PAGE = ['Access-Control-Allow-Origin', '*'] as const;
const notFound = (what: string) => new Problem(platformProblems['request/not-found'], `Nothing published is called ${what}.`);

@Controller('v1')
export class PublicApiController {
  constructor(private readonly releases: ReleasesReadModel) {}

  @Get('releases')
  @Header(...FROM_ANY_PAGE)
  @Endpoint({ summary: 'All published releases, newest edition first.', allow: 'anyone', answer: releasesResponse })
  async getReleases() {
    return { items: await this.releases.list(), nextCursor: null };
  }

  @Get('editions')
  @Header(...FROM_ANY_PAGE)
  @Endpoint({ summary: 'Published editions: the current release of each.', allow: 'anyone', answer: releasesResponse })
  async getEditions() {
    return { items: (await this.releases.list()).filter(({ status }) => status === 'published'), nextCursor: null };
  }

  @Get('releases/:edition/:revision/manifest.json')
  @Endpoint({ summary: 'Manifest of a release: every file with its digest.', allow: 'anyone', answer: null, mediaType: JSON_TYPE })
  async getManifest(
    @Param('edition') edition: string,
    @Param('revision') revision: string,
    @Req() request: FastifyRequest,
    @Res() reply: FastifyReply,
  ) {
    const release = await this.revision(edition, revision);
    sendStoredBytes(
      request,
      reply,
      { bytes: Buffer.from(release.manifestBytes), mediaType: JSON_TYPE, digest: release.digest },
      'immutable',
    );
  }

  @Get('releases/:edition/:revision/signature.json')
  @Endpoint({ summary: 'Signature of a release: Ed25519 over its manifest.', allow: 'anyone', answer: null, mediaType: JSON_TYPE })
  async getSignature(
    @Param('edition') edition: string,
    @Param('revision') revision: string,
    @Req() request: FastifyRequest,
    @Res() reply: FastifyReply,
  ) {
    const { signature } = await this.revision(edition, revision);
    const bytes = Buffer.from(signature);
    sendStoredBytes(request, reply, { bytes, mediaType: JSON_TYPE, digest: sha256(bytes) }, 'immutable');
  }

  @Get('signing-keys')
  @Header(...FROM_ANY_PAGE)
  @Endpoint({ summary: 'Public keys that releases are signed with, newest first.', allow: 'anyone', answer: signingKeysResponse })
  async getSigningKeys() {
    return { items: await this.releases.signingKeys(), nextCursor: null };
  }

  @Get('releases/:edition/:revision/*')
  @ApiParam({ name: 'path', description: 'Path as the manifest lists it', schema: { type: 'string' } })
  @Endpoint({
    summary: 'A file of a release, as stored: bundle.json, documents/…, csv/….',
    allow: 'anyone',
    answer: null,
    mediaType: 'application/octet-stream',
  })
  async getReleaseFile(
    @Param('edition') edition: string,
    @Param('revision') revision: string,
    @Req() request: FastifyRequest,
    @Res() reply: FastifyReply,
  ) {
    const { '*': path } = request.params as { '*': string };
    await this.send(request, reply, await this.revision(edition, revision), path, 'immutable');
  }

  @Get('editions/:edition')
  @Endpoint({
    summary: 'An edition as published: overall standings, scheme, evidence.',
    allow: 'anyone',
    answer: null,
    mediaType: JSON_TYPE,
  })
  async getEdition(@Param('edition') edition: string, @Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    await this.send(request, reply, await this.current(edition), 'documents/edition.json');
  }

  @Get('editions/:edition/standings')
  @Endpoint({ summary: 'Overall standings, with the edition they belong to.', allow: 'anyone', answer: null, mediaType: JSON_TYPE })
  async getOverallStandings(@Param('edition') edition: string, @Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    await this.send(request, reply, await this.current(edition), 'documents/edition.json');
  }

  @Get('editions/:edition/standings/:category')
  @Endpoint({
    summary: 'Standings of a category; filters narrow the rows, places stay as published.',
    allow: 'anyone',
    answer: null,
    mediaType: JSON_TYPE,
  })
  async getStandings(
    @Param('edition') edition: string,
    @Param('category') category: string,
    @Query({ schema: standingsQuery }) query: StandingsQuery,
    @Req() request: FastifyRequest,
    @Res() reply: FastifyReply,
  ) {
    const release = await this.current(edition);
    const path = `documents/standings/${category}.json`;
    if (Object.keys(query).length === 0) return this.send(request, reply, release, path);
    const document = await this.releases.document<CategoryDocument>(release, path);
    if (!document) throw notFound(category);
    sendJson(request, reply, { ...document, rows: document.rows.filter((row) => fits(row, query)) });
  }

  @Get('editions/:edition/variants/:variant/provenance')
  @Header(...FROM_ANY_PAGE)
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
    const release = await this.current(edition);
    const document = await this.releases.document<VariantDocument>(release, `documents/variants/${variant}.json`);
    if (!document) throw notFound(variant);
    const rigs = await this.releases.document<RigsDocument>(release, 'documents/rigs.json');
    return provenanceOf(release, document, rigs?.instruments ?? [], quantity);
  }

  @Get('editions/:edition/variants/:variant')
  @Endpoint({
    summary: 'A variant in an edition: places, figures, claims, every specimen, history.',
    allow: 'anyone',
    answer: null,
    mediaType: JSON_TYPE,
  })
  async getEditionVariant(
    @Param('edition') edition: string,
    @Param('variant') variant: string,
    @Req() request: FastifyRequest,
    @Res() reply: FastifyReply,
  ) {
    await this.send(request, reply, await this.current(edition), `documents/variants/${variant}.json`);
  }

  @Get('variants/:variant')
  @Endpoint({ summary: 'A variant in the newest edition that has it.', allow: 'anyone', answer: null, mediaType: JSON_TYPE })
  async getVariant(@Param('variant') variant: string, @Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    await this.send(request, reply, await this.newestWith(variant), `documents/variants/${variant}.json`);
  }

  @Get('variants/:variant/history')
  @Endpoint({ summary: 'A variant over all editions, oldest first.', allow: 'anyone', answer: null, mediaType: JSON_TYPE })
  async getVariantHistory(@Param('variant') variant: string, @Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    const document = await this.releases.document<VariantDocument>(await this.newestWith(variant), `documents/variants/${variant}.json`);
    sendJson(request, reply, { variant: document?.variant, history: document?.history });
  }

  @Get('variants/:variant/specimens')
  @Endpoint({
    summary: 'Every submission and specimen behind the figures of a variant.',
    allow: 'anyone',
    answer: null,
    mediaType: JSON_TYPE,
  })
  async getVariantSpecimens(@Param('variant') variant: string, @Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    const document = await this.releases.document<VariantDocument>(await this.newestWith(variant), `documents/variants/${variant}.json`);
    sendJson(request, reply, { variant: document?.variant, submissions: document?.submissions });
  }

  @Get('makers')
  @Endpoint({ summary: 'Makers with their lines, as the newest edition names them.', allow: 'anyone', answer: null, mediaType: JSON_TYPE })
  async getMakers(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    const { makers } = await this.catalogue();
    sendJson(request, reply, { items: makers, nextCursor: null });
  }

  @Get('lines')
  @Endpoint({
    summary: 'Lines with their variants, as the newest edition names them.',
    allow: 'anyone',
    answer: null,
    mediaType: JSON_TYPE,
  })
  async getLines(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    const { makers } = await this.catalogue();
    const items = makers.flatMap(({ slug, name, lines }) => lines.map((line) => ({ maker: { slug, name }, ...line })));
    sendJson(request, reply, { items, nextCursor: null });
  }

  @Get('checks')
  @Endpoint({ summary: 'The automatic checks, as the newest edition pinned them.', allow: 'anyone', answer: null, mediaType: JSON_TYPE })
  async getChecks(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    sendJson(request, reply, { items: (await this.catalogue()).checks, nextCursor: null });
  }

  @Get('methods/:method/versions/:number')
  @Endpoint({ summary: 'One version of a method, as published.', allow: 'anyone', answer: null, mediaType: JSON_TYPE })
  async getMethodVersion(
    @Param('method') method: string,
    @Param('number') number: string,
    @Req() request: FastifyRequest,
    @Res() reply: FastifyReply,
  ) {
    const path = `documents/methods/${method}-${number}.json`;
    await this.send(request, reply, await this.newestHolding(path), path);
  }

  @Get('problems')
  @Header(...FROM_ANY_PAGE)
  @Endpoint({ summary: 'Every kind of problem that the API answers with.', allow: 'anyone', answer: problemsResponse })
  getProblems() {
    return problemsAnswer();
  }

  private async send(
    request: FastifyRequest,
    reply: FastifyReply,
    release: PublishedRelease,
    path: string,
    lifetime: 'immutable' | 'revalidate' = 'revalidate',
  ) {
    const stored = await this.releases.bytes(release, path);
    if (!stored) throw notFound(path);
    sendStoredBytes(request, reply, stored, lifetime);
  }

  private async current(edition: string): Promise<PublishedRelease> {
    const release = await this.releases.find(edition);
    if (!release) throw notFound(`edition ${edition}`);
    return release;
  }

  private async revision(edition: string, revision: string): Promise<PublishedRelease> {
    const release = /^\d{1,6}$/.test(revision) ? await this.releases.find(edition, Number(revision)) : null;
    if (!release) throw notFound(`revision ${revision} of edition ${edition}`);
    return release;
  }

  private newestWith(variant: string): Promise<PublishedRelease> {
    return this.newestHolding(`documents/variants/${variant}.json`);
  }

  private async newestHolding(path: string): Promise<PublishedRelease> {
    for (const { edition, status } of await this.releases.list()) {
      const release = status === 'published' ? await this.releases.find(edition) : null;
      if (release?.manifest.files.some((file) => file.path === path)) return release;
    }
    throw notFound(path);
  }

  private async catalogue(): Promise<CatalogueDocument> {
    const release = await this.releases.newest();
    const document = release && (await this.releases.document<CatalogueDocument>(release, 'documents/catalogue.json'));
    if (!document) throw notFound('any edition');
    return document;
  }
}

/** Sends what is made from stored documents, with the digest of the text as ETag. */
function sendJson(request: FastifyRequest, reply: FastifyReply, value: unknown): void {
  const text = JSON.stringify(value);
  sendStoredBytes(request, reply, { bytes: Buffer.from(text), mediaType: JSON_TYPE, digest: sha256(text) }, 'revalidate');
}

function fits({ variant }: CategoryRow, { maker, material, construction, carriers, peNumber }: StandingsQuery): boolean {
  return (
    (maker === undefined || variant.maker.slug === maker) &&
    (material === undefined || variant.material === material) &&
    (construction === undefined || variant.construction === construction) &&
    (carriers === undefined || variant.carriers === carriers) &&
    (peNumber === undefined || variant.peNumber === peNumber)
  );
}
