import { Controller, Get, Req, Res } from '@nestjs/common';
import { ApiParam } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import {
  categoryDocumentSchema,
  editionDocumentSchema,
  pairsDocumentSchema,
  recordsDocumentSchema,
} from '../contract/documents/release-documents.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { PublishedFiles } from './published-files.js';
import { sendPublished } from './serve-published.js';

const EDITION = { name: 'edition', schema: { type: 'string' } } as const;
const DIVISION = { name: 'division', description: 'Slug of the division, as the edition lists it', schema: { type: 'string' } } as const;

/** What each division of an edition has for itself, as stored. An edition with one division has these at its own address, and none here. */
@Controller('v1/editions/:edition/:division')
export class DivisionDocumentsController {
  constructor(private readonly files: PublishedFiles) {}

  @Get()
  @ApiParam(EDITION)
  @ApiParam(DIVISION)
  @Endpoint({
    summary: 'A division as published: overall standings, scheme, evidence.',
    allow: 'anyone',
    answer: null,
    stored: editionDocumentSchema,
  })
  getDivision(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return this.send(request, reply);
  }

  @Get('standings')
  @ApiParam(EDITION)
  @ApiParam(DIVISION)
  @Endpoint({ summary: 'Overall standings of a division.', allow: 'anyone', answer: null, stored: editionDocumentSchema })
  getDivisionStandings(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return this.send(request, reply);
  }

  @Get('standings/:category')
  @ApiParam(EDITION)
  @ApiParam(DIVISION)
  @ApiParam({ name: 'category', schema: { type: 'string' } })
  @Endpoint({ summary: 'Standings of a category of a division.', allow: 'anyone', answer: null, stored: categoryDocumentSchema })
  getDivisionCategory(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return this.send(request, reply);
  }

  @Get('records')
  @ApiParam(EDITION)
  @ApiParam(DIVISION)
  @Endpoint({ summary: 'Records and runs at the top of a division.', allow: 'anyone', answer: null, stored: recordsDocumentSchema })
  getDivisionRecords(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return this.send(request, reply);
  }

  @Get('pairs')
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

  private async send(request: FastifyRequest, reply: FastifyReply): Promise<void> {
    const [path = ''] = request.url.split('?');
    const found = this.files.at(path);
    if (!found) throw new Problem(platformProblems['request/not-found'], `Nothing published is called ${path}.`);
    await sendPublished(request, reply, this.files, found);
  }
}
