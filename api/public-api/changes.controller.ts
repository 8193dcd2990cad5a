import { Controller, Get, Query } from '@nestjs/common';
import type { z } from 'zod';
import { publicChangesQuery, publicChangesResponse } from '../contract/documents/changes.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { ChangesReadModel } from '../releases/changes.read-model.js';

@Controller('v1/changes')
export class ChangesController {
  constructor(private readonly changes: ChangesReadModel) {}

  @Get()
  @Endpoint({
    summary: 'What changed since: openings and closings of editions, releases, errata with their cells; without gaps, kept for ever.',
    allow: 'anyone',
    answer: publicChangesResponse,
  })
  async getChanges(@Query({ schema: publicChangesQuery }) { after, limit }: z.infer<typeof publicChangesQuery>) {
    const items = await this.changes.after(after, limit);
    return { items, lastNumber: items.at(-1)?.number ?? after };
  }
}
