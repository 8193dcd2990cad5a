/** Purpose: tells operators whether the program lives and whether it can work. Anyone may ask. */
import { Controller, Get, Module } from '@nestjs/common';
import { z } from 'zod';
import { Endpoint } from '../endpoint.js';
import { Readiness } from './readiness.js';

const healthResponse = z.strictObject({ status: z.literal('ok') });
const readyResponse = healthResponse.extend({
  trouble: z
    .array(z.string())
    .describe('What is wrong though work may be sent here: a full disk, a database that takes no changes; mostly empty'),
});

@Controller('health')
class HealthController {
  constructor(private readonly readiness: Readiness) {}

  @Get('live')
  @Endpoint({ summary: 'Whether the program runs.', allow: 'anyone', answer: healthResponse, isUnlimited: true })
  getLive() {
    return { status: 'ok' };
  }

  @Get('ready')
  @Endpoint({
    summary: 'Whether work may be sent here: the database answers, and the program is not about to end.',
    allow: 'anyone',
    answer: readyResponse,
    isUnlimited: true,
  })
  async getReady() {
    return { status: 'ok', trouble: await this.readiness.require() };
  }
}

@Module({ controllers: [HealthController] })
export class HealthModule {}
