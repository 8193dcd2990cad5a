/** Purpose: tells operators whether the program lives and whether it can work. Anyone may ask. */
import { Controller, Get, Module } from '@nestjs/common';
import { z } from 'zod';
import { Database } from '../database/database.js';
import { Endpoint } from './endpoint.js';

const healthResponse = z.strictObject({ status: z.literal('ok') });

@Controller('health')
class HealthController {
  constructor(private readonly database: Database) {}

  @Get('live')
  @Endpoint({ summary: 'Whether the program runs.', allow: 'anyone', answer: healthResponse, isUnlimited: true })
  getLive() {
    return { status: 'ok' };
  }

  @Get('ready')
  @Endpoint({
    summary: 'Whether the program can work: its database answers.',
    allow: 'anyone',
    answer: healthResponse,
    isUnlimited: true,
  })
  async getReady() {
    await this.database.client.$queryRaw`SELECT 1`;
    return { status: 'ok' };
  }
}

@Module({ controllers: [HealthController] })
export class HealthModule {}
