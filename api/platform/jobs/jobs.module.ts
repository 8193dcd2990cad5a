/** Purpose: shows operators what the worker has to do and where it failed. */
import { Controller, Get, Module } from '@nestjs/common';
import { Endpoint } from '../http/endpoint.js';
import { Jobs } from './jobs.js';
import { openOrdersResponse } from '../../contract/order-state.js';

@Controller('v1/operations')
class OperationsController {
  constructor(private readonly jobs: Jobs) {}

  @Get('orders')
  @Endpoint({ summary: 'Orders to the worker that wait, are at work or failed.', allow: ['admin'], answer: openOrdersResponse })
  async getOpenOrders() {
    return { items: await this.jobs.open(), nextCursor: null };
  }
}

@Module({ controllers: [OperationsController] })
export class JobsModule {}
