import { Controller, Get, Query, Req, Res } from '@nestjs/common';
import { ApiParam } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import {
  categoryDocumentSchema,
  editionDocumentSchema,
  pairsDocumentSchema,
  recordsDocumentSchema,
} from '../contract/documents/release-documents.js';
import type { CategoryDocument, CategoryRow } from '../contract/documents/release-documents.js';
import { standingsQuery } from '../contract/endpoints/public-api.js';
import type { StandingsQuery } from '../contract/endpoints/public-api.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { PublishedReleases } from '../releases/published-releases.read-model.js';
import { PublishedFiles } from './published-files.js';
import type { FoundFile } from './published-files.js';
import { nothingCalled } from './send-at.js';
import { sendJson, sendPublished } from './serve-published.js';

const EDITION = { name: 'edition', schema: { type: 'string' } } as const;
const CATEGORY = { name: 'category', schema: { type: 'string' } } as const;
const DIVISION = { name: 'division', description: 'Slug of a division, as the edition lists it', schema: { type: 'string' } } as const;

/** Tables of what is compared: of an edition with one division at its own address, else of each division at the division's. */
@Controller('v1/editions/:edition')
export class StandingsController {
  constructor(
    private readonly releases: PublishedReleases,
    private readonly files: PublishedFiles,
  ) {}

  @Get('standings/:category')
  @ApiParam(EDITION)
  @ApiParam(CATEGORY)
  @Endpoint({
    summary: 'Standings of a category; filters narrow the rows, places stay as published.',
    allow: 'anyone',
    answer: null,
    stored: categoryDocumentSchema,
  })
  getStandings(@Query({ schema: standingsQuery }) query: StandingsQuery, @Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return this.filtered(query, request, reply);
  }

  @Get('divisions/:division')
  @ApiParam(EDITION)
  @ApiParam(DIVISION)
  @Endpoint({ summary: 'A division as published: standings, scheme.', allow: 'anyone', answer: null, stored: editionDocumentSchema })
  getDivision(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return this.send(request, reply);
  }

  @Get('divisions/:division/standings')
  @ApiParam(EDITION)
  @ApiParam(DIVISION)
  @Endpoint({ summary: 'Overall standings of a division.', allow: 'anyone', answer: null, stored: editionDocumentSchema })
  getDivisionStandings(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return this.send(request, reply);
  }

  @Get('divisions/:division/standings/:category')
  @ApiParam(EDITION)
  @ApiParam(DIVISION)
  @ApiParam(CATEGORY)
  @Endpoint({
    summary: 'Standings of a category of a division; filters narrow the rows, places stay as published.',
    allow: 'anyone',
    answer: null,
    stored: categoryDocumentSchema,
  })
  getDivisionCategory(
    @Query({ schema: standingsQuery }) query: StandingsQuery,
    @Req() request: FastifyRequest,
    @Res() reply: FastifyReply,
  ) {
    return this.filtered(query, request, reply);
  }

  @Get('divisions/:division/records')
  @ApiParam(EDITION)
  @ApiParam(DIVISION)
  @Endpoint({ summary: 'Records and runs at the top of a division.', allow: 'anyone', answer: null, stored: recordsDocumentSchema })
  getDivisionRecords(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return this.send(request, reply);
  }

  @Get('divisions/:division/pairs')
  @ApiParam(EDITION)
  @ApiParam(DIVISION)
  @Endpoint({
    summary: 'Chance that one variant of a division is ahead of another overall, of every pair.',
    allow: 'anyone',
    answer: null,
    stored: pairsDocumentSchema,
  })
  getDivisionPairs(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return this.send(request, reply);
  }

  private at(request: FastifyRequest): FoundFile {
    const [path = ''] = request.url.split('?');
    const found = this.files.at(path);
    if (!found) throw nothingCalled(path);
    return found;
  }

  private async send(request: FastifyRequest, reply: FastifyReply): Promise<void> {
    await sendPublished(request, reply, this.files, this.at(request));
  }

  private async filtered(query: StandingsQuery, request: FastifyRequest, reply: FastifyReply): Promise<void> {
    const { release, path } = this.at(request);
    const document = Object.keys(query).length === 0 ? null : await this.releases.document<CategoryDocument>(release, path);
    if (!document) return this.send(request, reply);
    await sendJson(request, reply, { ...document, rows: document.rows.filter((row) => fits(row, query)) });
  }
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
