import { Body, Controller, Param, Post } from '@nestjs/common';
import type { z } from 'zod';
import { SpoolsReadModel } from '../catalogue/spools/spools.read-model.js';
import { normaliseBlindCode } from '../contract/blind-code.js';
import { secondedRequest } from '../contract/endpoints/proposals.js';
import { spoolResponse } from '../contract/endpoints/spools.js';
import { CurrentActor } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { IfMatch } from '../platform/http/headers/if-match.js';
import { ReidentifySpool } from './reidentify-spool.js';

@Controller('v1/catalogue/spools/:code/reidentifications')
export class ReidentificationsController {
  constructor(
    private readonly reidentify: ReidentifySpool,
    private readonly spools: SpoolsReadModel,
  ) {}

  @Post()
  @Endpoint({
    summary: 'Put on record, as another person proposed, that a spool is another variant than was thought.',
    allow: ['editor'],
    status: 201,
    answer: spoolResponse,
    needsIfMatch: true,
  })
  async postReidentification(
    @CurrentActor() actor: Actor,
    @Param('code') code: string,
    @IfMatch() expectedVersion: number,
    @Body({ schema: secondedRequest }) { proposal }: z.infer<typeof secondedRequest>,
  ) {
    await this.reidentify.run(actor, { proposal, code, expectedVersion });
    return this.spools.byCode(actor, normaliseBlindCode(code));
  }
}
