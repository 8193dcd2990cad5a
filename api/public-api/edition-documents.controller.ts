import { Controller, Get, Req, Res } from '@nestjs/common';
import { ApiParam } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { claimsDocumentSchema } from '../contract/documents/claims-document.js';
import {
  catalogueDocumentSchema,
  pairsDocumentSchema,
  recordsDocumentSchema,
  withdrawnDocumentSchema,
} from '../contract/documents/release-documents.js';
import { houseDocumentSchema } from '../contract/documents/house-document.js';
import { remarksDocumentSchema } from '../contract/documents/remarks-document.js';
import { retestsDocumentSchema } from '../contract/documents/retests-document.js';
import { rigsDocumentSchema } from '../contract/documents/rigs-document.js';
import { roundRobinsDocumentSchema } from '../contract/documents/round-robins-document.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { PublishedFiles } from './published-files.js';
import { sendAt } from './send-at.js';

/** Documents of an edition's current release that are one file each, as stored. */
@Controller('v1/editions/:edition')
export class EditionDocumentsController {
  constructor(private readonly files: PublishedFiles) {}

  @Get('records')
  @ApiParam({ name: 'edition', schema: { type: 'string' } })
  @Endpoint({
    summary: 'Records by category and class of strength, and runs at the top.',
    allow: 'anyone',
    answer: null,
    stored: recordsDocumentSchema,
  })
  getRecords(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return sendAt(this.files, request, reply);
  }

  @Get('pairs')
  @ApiParam({ name: 'edition', schema: { type: 'string' } })
  @Endpoint({
    summary: 'Chance that one variant is ahead of another overall, of every pair.',
    allow: 'anyone',
    answer: null,
    stored: pairsDocumentSchema,
  })
  getPairs(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return sendAt(this.files, request, reply);
  }

  @Get('withdrawn')
  @ApiParam({ name: 'edition', schema: { type: 'string' } })
  @Endpoint({
    summary: 'Results that were withdrawn: why, when, how to cite.',
    allow: 'anyone',
    answer: null,
    stored: withdrawnDocumentSchema,
  })
  getWithdrawn(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return sendAt(this.files, request, reply);
  }

  @Get('claims')
  @ApiParam({ name: 'edition', schema: { type: 'string' } })
  @Endpoint({ summary: 'What the labels say, beside what was measured.', allow: 'anyone', answer: null, stored: claimsDocumentSchema })
  getClaims(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return sendAt(this.files, request, reply);
  }

  @Get('round-robins')
  @ApiParam({ name: 'edition', schema: { type: 'string' } })
  @Endpoint({
    summary: 'Round robins of an edition: how well testers agree.',
    allow: 'anyone',
    answer: null,
    stored: roundRobinsDocumentSchema,
  })
  getEditionRoundRobins(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return sendAt(this.files, request, reply);
  }

  @Get('retest-results')
  @ApiParam({ name: 'edition', schema: { type: 'string' } })
  @Endpoint({
    summary: 'What was tested again, blind, and how far it differs.',
    allow: 'anyone',
    answer: null,
    stored: retestsDocumentSchema,
  })
  getRetestResults(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return sendAt(this.files, request, reply);
  }

  @Get('rigs')
  @ApiParam({ name: 'edition', schema: { type: 'string' } })
  @Endpoint({
    summary: 'Instruments of an edition: certificates and control charts.',
    allow: 'anyone',
    answer: null,
    stored: rigsDocumentSchema,
  })
  getRigs(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return sendAt(this.files, request, reply);
  }

  @Get('house')
  @ApiParam({ name: 'edition', schema: { type: 'string' } })
  @Endpoint({
    summary: 'Who publishes: contact, people, funding, interests, licence, right of reply.',
    allow: 'anyone',
    answer: null,
    stored: houseDocumentSchema,
  })
  getHouse(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return sendAt(this.files, request, reply);
  }

  @Get('remarks')
  @ApiParam({ name: 'edition', schema: { type: 'string' } })
  @Endpoint({
    summary: 'Caveats of the editors and replies of makers.',
    allow: 'anyone',
    answer: null,
    stored: remarksDocumentSchema,
  })
  getEditionRemarks(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return sendAt(this.files, request, reply);
  }

  @Get('catalogue')
  @ApiParam({ name: 'edition', schema: { type: 'string' } })
  @Endpoint({
    summary: 'Makers, lines, variants, methods and checks of an edition.',
    allow: 'anyone',
    answer: null,
    stored: catalogueDocumentSchema,
  })
  getCatalogue(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return sendAt(this.files, request, reply);
  }
}
