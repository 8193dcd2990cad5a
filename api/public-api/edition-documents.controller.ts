import { Controller, Get, Param, Req, Res } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { ReleasesReadModel } from '../releases/releases.read-model.js';
import { sendStoredBytes } from './stored-bytes.js';

const JSON_TYPE = 'application/json';

/** Documents of an edition's current release that are one file each, as stored. */
@Controller('v1/editions/:edition')
export class EditionDocumentsController {
  constructor(private readonly releases: ReleasesReadModel) {}

  @Get('records')
  @Endpoint({
    summary: 'Records by category and class of strength, and runs at the top.',
    allow: 'anyone',
    answer: null,
    mediaType: JSON_TYPE,
  })
  getRecords(@Param('edition') edition: string, @Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return this.send(request, reply, edition, 'records');
  }

  @Get('pairs')
  @Endpoint({
    summary: 'Chance that one variant is ahead of another overall, of every pair.',
    allow: 'anyone',
    answer: null,
    mediaType: JSON_TYPE,
  })
  getPairs(@Param('edition') edition: string, @Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return this.send(request, reply, edition, 'pairs');
  }

  @Get('withdrawn')
  @Endpoint({ summary: 'Results that were withdrawn: why, when, how to cite.', allow: 'anyone', answer: null, mediaType: JSON_TYPE })
  getWithdrawn(@Param('edition') edition: string, @Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return this.send(request, reply, edition, 'withdrawn');
  }

  @Get('claims')
  @Endpoint({ summary: 'What the labels say, beside what was measured.', allow: 'anyone', answer: null, mediaType: JSON_TYPE })
  getClaims(@Param('edition') edition: string, @Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return this.send(request, reply, edition, 'claims');
  }

  @Get('round-robins')
  @Endpoint({ summary: 'Round robins of an edition: how well testers agree.', allow: 'anyone', answer: null, mediaType: JSON_TYPE })
  getEditionRoundRobins(@Param('edition') edition: string, @Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return this.send(request, reply, edition, 'round-robins');
  }

  @Get('retest-results')
  @Endpoint({ summary: 'What was tested again, blind, and how far it differs.', allow: 'anyone', answer: null, mediaType: JSON_TYPE })
  getRetestResults(@Param('edition') edition: string, @Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return this.send(request, reply, edition, 'retests');
  }

  @Get('rigs')
  @Endpoint({ summary: 'Instruments of an edition: certificates and control charts.', allow: 'anyone', answer: null, mediaType: JSON_TYPE })
  getRigs(@Param('edition') edition: string, @Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return this.send(request, reply, edition, 'rigs');
  }

  @Get('catalogue')
  @Endpoint({ summary: 'Makers, lines, variants, methods and checks of an edition.', allow: 'anyone', answer: null, mediaType: JSON_TYPE })
  getCatalogue(@Param('edition') edition: string, @Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return this.send(request, reply, edition, 'catalogue');
  }

  private async send(request: FastifyRequest, reply: FastifyReply, edition: string, name: string): Promise<void> {
    const release = await this.releases.find(edition);
    const stored = release && (await this.releases.bytes(release, `documents/${name}.json`));
    if (!stored) throw new Problem(platformProblems['request/not-found'], `Nothing published is called edition ${edition}.`);
    sendStoredBytes(request, reply, stored, 'revalidate');
  }
}
