/**
 * Purpose: tells addresses of openings, closings, releases and errata as they become true, signed after the Standard Webhooks conventions.
 * States: told, failing (tried again with growing waits, before anything later is told), paused (by an admin, or after three days of failures).
 * Admins add, pause, resume, replay and end; every attempt is on record. Nothing goes to private addresses unless the operator allows it.
 */
import { Module } from '@nestjs/common';
import { ReleasesModule } from '../releases/releases.module.js';
import { KeepWebhooks } from './keep-webhooks.js';
import { TellWebhook } from './tell-webhook.js';
import { WebhookWork } from './webhook-work.js';
import { WebhooksController } from './webhooks.controller.js';
import { WebhooksReadModel } from './webhooks.read-model.js';
import { WebhooksStore } from './webhooks.store.js';

@Module({
  imports: [ReleasesModule],
  controllers: [WebhooksController],
  providers: [KeepWebhooks, TellWebhook, WebhookWork, WebhooksReadModel, WebhooksStore],
  exports: [WebhooksReadModel, WebhookWork],
})
export class WebhooksModule {}
