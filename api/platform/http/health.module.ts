/** Purpose: tells operators whether the program lives and whether it can work. Anyone may ask. */
import { Controller, Get, Module } from '@nestjs/common';
import { z } from 'zod';
import { Endpoint } from './endpoint.js';
import { Readiness } from './readiness.js';

const healthResponse = z.strictObject({ status: z.literal('ok') });

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
    answer: healthResponse,
    isUnlimited: true,
  })
  async getReady() {
    await this.readiness.require();
    return { status: 'ok' };
  }
}

@Module({ controllers: [HealthController] })
export class HealthModule {}
