import { Controller, Get, Req, Res } from '@nestjs/common';
import { ApiParam } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { methodDocumentSchema } from '../contract/documents/release-documents.js';
import type { CatalogueDocument } from '../contract/documents/release-documents.js';
import {
  problemsResponse,
  publishedChecksResponse,
  publishedLinesResponse,
  publishedMakersResponse,
} from '../contract/endpoints/public-api.js';
import { problemsAnswer } from '../error-catalogue.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { PublishedReleases } from '../releases/published-releases.read-model.js';
import { PublishedFiles } from './published-files.js';
import { nothingCalled, sendAt } from './send-at.js';
import { sendJson } from './serve-published.js';

/** Of a part of an address that leads to a stored file and is read as a whole. */
const TEXT = { type: 'string' } as const;
const NUMBER = { type: 'integer', minimum: 1 } as const;

/** What results are about, as the newest edition names it: makers, lines, checks, versions of methods; and the problems that the API answers with. */
@Controller('v1')
export class PublishedCatalogueController {
  constructor(
    private readonly releases: PublishedReleases,
    private readonly files: PublishedFiles,
  ) {}

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
  @ApiParam({ name: 'number', schema: NUMBER })
  @Endpoint({ summary: 'One version of a method, as published.', allow: 'anyone', answer: null, stored: methodDocumentSchema })
  getMethodVersion(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return sendAt(this.files, request, reply);
  }

  @Get('problems')
  @Endpoint({ summary: 'Every kind of problem that the API answers with.', allow: 'anyone', answer: problemsResponse })
  getProblems() {
    return problemsAnswer();
  }

  private async catalogue(): Promise<CatalogueDocument> {
    const release = this.releases.newest();
    const document = release && (await this.releases.document<CatalogueDocument>(release, 'documents/catalogue.json'));
    if (!document) throw nothingCalled('an edition yet');
    return document;
  }
}
