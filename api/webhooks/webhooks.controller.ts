import { Body, Controller, Delete, Get, Param, Post, Query } from '@nestjs/common';
import * as schemas from '../contract/endpoints/webhooks.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import { CurrentActor } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { KeepWebhooks } from './keep-webhooks.js';
import { WebhooksReadModel } from './webhooks.read-model.js';

const ID = { schema: schemas.webhookParameter };

@Controller('v1/webhooks')
export class WebhooksController {
  constructor(
    private readonly keep: KeepWebhooks,
    private readonly webhooks: WebhooksReadModel,
  ) {}

  @Get()
  @Endpoint({ summary: 'Webhooks, with where each stands.', allow: ['admin'], answer: schemas.webhooksResponse })
  async getWebhooks() {
    return { items: await this.webhooks.list(), nextCursor: null };
  }

  @Post()
  @Endpoint({
    summary: 'Lets an address be told of openings, closings, releases and errata from now on.',
    allow: ['admin'],
    status: 201,
    answer: schemas.newWebhookResponse,
    isSecret: true,
  })
  async addWebhook(@CurrentActor() actor: Actor, @Body({ schema: schemas.webhookRequest }) request: schemas.WebhookRequest) {
    const { id, secret } = await this.keep.add(actor, request);
    return { ...(await this.found(id)), secret };
  }

  @Get(':id')
  @Endpoint({ summary: 'A webhook, and whether it is paused and why.', allow: ['admin'], answer: schemas.webhookSchema })
  getWebhook(@Param('id', ID) id: string) {
    return this.found(id);
  }

  @Delete(':id')
  @Endpoint({ summary: 'Tells an address nothing more.', allow: ['admin'], status: 204, answer: null })
  endWebhook(@CurrentActor() actor: Actor, @Param('id', ID) id: string): Promise<void> {
    return this.keep.end(actor, id);
  }

  @Get(':id/deliveries')
  @Endpoint({
    summary: 'Every attempt to tell a webhook of a change, newest first.',
    allow: ['admin'],
    answer: schemas.webhookDeliveriesResponse,
  })
  async getWebhookDeliveries(
    @Param('id', ID) id: string,
    @Query({ schema: schemas.webhookDeliveriesQuery }) query: schemas.WebhookDeliveriesQuery,
  ) {
    await this.found(id);
    return this.webhooks.deliveries(id, query);
  }

  @Post(':id/replays')
  @Endpoint({
    summary: 'Tells a webhook again of everything after a change, in order.',
    allow: ['admin'],
    status: 202,
    answer: schemas.webhookSchema,
  })
  async replayWebhook(
    @CurrentActor() actor: Actor,
    @Param('id', ID) id: string,
    @Body({ schema: schemas.webhookReplayRequest }) { after }: { after: number },
  ) {
    await this.keep.replay(actor, id, after);
    return this.found(id);
  }

  @Post(':id/pause')
  @Endpoint({
    summary: 'Tells a webhook nothing for a while; nothing is lost.',
    allow: ['admin'],
    status: 200,
    answer: schemas.webhookSchema,
  })
  async pauseWebhook(
    @CurrentActor() actor: Actor,
    @Param('id', ID) id: string,
    @Body({ schema: schemas.webhookPauseRequest }) { reason }: { reason: string },
  ) {
    await this.keep.pause(actor, id, reason);
    return this.found(id);
  }

  @Delete(':id/pause')
  @Endpoint({ summary: 'Goes on telling a paused webhook, from where it was left.', allow: ['admin'], status: 204, answer: null })
  resumeWebhook(@CurrentActor() actor: Actor, @Param('id', ID) id: string): Promise<void> {
    return this.keep.resume(actor, id);
  }

  private async found(id: string): Promise<schemas.WebhookResponse> {
    const webhook = await this.webhooks.find(id);
    if (!webhook) throw new Problem(platformProblems['request/not-found'], `No webhook has the id ${id}.`);
    return webhook;
  }
}
