import { Controller, Get, Param, Query, Req, Res } from '@nestjs/common';
import { ApiParam } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { provenanceQuery, provenanceResponse } from '../contract/documents/provenance.js';
import { variantDocumentSchema } from '../contract/documents/release-documents.js';
import type { VariantDocument } from '../contract/documents/release-documents.js';
import type { RigsDocument } from '../contract/documents/rigs-document.js';
import { variantHistoryResponse, variantSpecimensResponse } from '../contract/endpoints/public-api.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { PublishedReleases } from '../releases/published-releases.read-model.js';
import type { KnownRelease } from '../releases/published-releases.read-model.js';
import { provenanceOf } from './provenance.js';
import { PublishedFiles } from './published-files.js';
import { nothingCalled, sendAt } from './send-at.js';
import { sendJson } from './serve-published.js';

/** Of a part of an address that leads to a stored file and is read as a whole. */
const TEXT = { type: 'string' } as const;

/** Variants: in one edition, in the newest that has them, over all editions. */
@Controller('v1')
export class PublishedVariantsController {
  constructor(
    private readonly releases: PublishedReleases,
    private readonly files: PublishedFiles,
  ) {}

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
    return sendAt(this.files, request, reply);
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
    if (!document) throw nothingCalled(variant);
    const rigs = await this.releases.document<RigsDocument>(release, 'documents/rigs.json');
    return provenanceOf(release, document, rigs?.instruments ?? [], quantity);
  }

  @Get('variants/:variant')
  @ApiParam({ name: 'variant', schema: TEXT })
  @Endpoint({ summary: 'A variant in the newest edition that has it.', allow: 'anyone', answer: null, stored: variantDocumentSchema })
  getVariant(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return sendAt(this.files, request, reply);
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

  private current(edition: string): KnownRelease {
    const release = this.releases.find(edition);
    if (!release) throw nothingCalled(`edition ${edition}`);
    return release;
  }

  private newestWith(variant: string): KnownRelease {
    const release = this.releases.newest(`documents/variants/${variant}.json`);
    if (!release) throw nothingCalled(variant);
    return release;
  }
}
