import { Body, Controller, Delete, Get, Param, Patch, Post, Put, Query } from '@nestjs/common';
import { CurrentActor } from '../../platform/http/access.js';
import type { Actor } from '../../platform/http/access.js';
import { Endpoint } from '../../platform/http/endpoint.js';
import { IfMatch } from '../../platform/http/headers/if-match.js';
import { AddClaim } from './add-claim.js';
import { AddVariant } from './add-variant.js';
import { notOnRecord } from '../catalogue-problems.js';
import { Retire } from '../retire.js';
import { CataloguePages } from '../catalogue-pages.read-model.js';
import * as schemas from '../../contract/endpoints/catalogue.js';
import { ChangeVariant } from './change-variant.js';
import { CorrectClaim } from './correct-claim.js';

const READERS = ['reviewer', 'editor', 'admin'] as const;

@Controller('v1/catalogue/variants')
export class VariantsController {
  constructor(
    private readonly add: AddVariant,
    private readonly change: ChangeVariant,
    private readonly claim: AddClaim,
    private readonly correct: CorrectClaim,
    private readonly retire: Retire,
    private readonly pages: CataloguePages,
  ) {}

  @Post()
  @Endpoint({ summary: 'Put a line in one size and colour on record.', allow: ['editor'], status: 201, answer: schemas.variantResponse })
  postCatalogueVariant(@CurrentActor() actor: Actor, @Body({ schema: schemas.variantRequest }) input: schemas.VariantRequest) {
    return this.add.run(actor, input);
  }

  @Get()
  @Endpoint({ summary: 'Variants on record with their claims, by slug.', allow: READERS, answer: schemas.variantsResponse })
  getCatalogueVariants(@Query({ schema: schemas.pageQuery }) page: schemas.PageQuery) {
    return this.pages.variants(page);
  }

  @Get(':slug')
  @Endpoint({ summary: 'One variant with its claims.', allow: READERS, answer: schemas.variantResponse })
  async getCatalogueVariant(@CurrentActor() actor: Actor, @Param('slug') slug: string) {
    const variant = await this.pages.variant(actor, slug);
    if (!variant) throw notOnRecord('variant', slug);
    return variant;
  }

  @Post(':slug/retirement')
  @Endpoint({
    summary: 'Retire a variant: nothing new is put under it, and it stays readable.',
    allow: ['editor'],
    status: 201,
    answer: schemas.variantResponse,
    needsIfMatch: true,
  })
  async postCatalogueVariantRetirement(
    @CurrentActor() actor: Actor,
    @Param('slug') slug: string,
    @IfMatch() expectedVersion: number,
    @Body({ schema: schemas.retirementRequest }) { reason }: schemas.RetirementRequest,
  ) {
    await this.retire.run(actor, { kind: 'variant', slug, expectedVersion, reason });
    return this.getCatalogueVariant(actor, slug);
  }

  @Delete(':slug/retirement')
  @Endpoint({ summary: 'Take a retired variant into use again.', allow: ['editor'], status: 204, answer: null, needsIfMatch: true })
  deleteCatalogueVariantRetirement(
    @CurrentActor() actor: Actor,
    @Param('slug') slug: string,
    @IfMatch() expectedVersion: number,
  ): Promise<void> {
    return this.retire.run(actor, { kind: 'variant', slug, expectedVersion, reason: null });
  }

  @Patch(':slug')
  @Endpoint({ summary: 'Correct the size or colour of a variant.', allow: ['editor'], answer: schemas.variantResponse, needsIfMatch: true })
  patchCatalogueVariant(
    @CurrentActor() actor: Actor,
    @Param('slug') slug: string,
    @IfMatch() expectedVersion: number,
    @Body({ schema: schemas.variantChange }) change: schemas.VariantChange,
  ) {
    return this.change.run(actor, { slug, expectedVersion, change });
  }

  @Post(':slug/claims')
  @Endpoint({ summary: 'Put what the label says on record, as printed.', allow: ['editor'], status: 201, answer: schemas.claimResponse })
  postClaim(
    @CurrentActor() actor: Actor,
    @Param('slug') variant: string,
    @Body({ schema: schemas.claimRequest }) input: schemas.ClaimRequest,
  ) {
    return this.claim.run(actor, { ...input, variant });
  }

  @Put(':slug/claims/:quantity')
  @Endpoint({ summary: 'Correct a claim that was copied wrongly.', allow: ['editor'], answer: schemas.variantResponse, needsIfMatch: true })
  putClaim(
    @CurrentActor() actor: Actor,
    @Param('slug') variant: string,
    @Param('quantity') quantity: string,
    @IfMatch() expectedVersion: number,
    @Body({ schema: schemas.claimCorrection }) correction: schemas.ClaimCorrection,
  ) {
    return this.correct.run(actor, { variant, quantity, expectedVersion, correction });
  }
}
