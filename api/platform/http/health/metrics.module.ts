/** Purpose: figures of the running program for monitoring, in the text format of Prometheus. They tell nothing of what is tested. */
import { Controller, Get, Header, Injectable, Module } from '@nestjs/common';
import { collectDefaultMetrics, Gauge, Histogram, Registry } from 'prom-client';
import { Database } from '../../database/database.js';
import { Jobs } from '../../jobs/jobs.js';
import { SOFTWARE_COMMIT, SOFTWARE_VERSION } from '../../program/software-version.js';
import { Endpoint } from '../endpoint.js';

/** Names, labels and limits of OpenTelemetry's semantic conventions for HTTP servers, as Prometheus writes them. @see https://opentelemetry.io/docs/specs/semconv/http/http-metrics/ */
const SECONDS = [0.005, 0.01, 0.025, 0.05, 0.075, 0.1, 0.25, 0.5, 0.75, 1, 2.5, 5, 7.5, 10];
const LABELS = ['http_request_method', 'http_route', 'http_response_status_code'] as const;

@Injectable()
export class Metrics {
  readonly registry = new Registry();
  private readonly answers: Histogram<(typeof LABELS)[number]>;

  constructor(
    private readonly jobs: Jobs,
    private readonly database: Database,
  ) {
    const registers = [this.registry];
    collectDefaultMetrics({ register: this.registry });
    this.answers = new Histogram({
      name: 'http_server_request_duration_seconds',
      help: 'Time until an answer was sent, by route.',
      labelNames: LABELS,
      buckets: SECONDS,
      registers,
    });
    new Gauge({
      name: 'fairpull_build_info',
      help: 'Version and commit of the program that runs; always 1.',
      labelNames: ['version', 'commit'],
      registers,
    }).set({ version: SOFTWARE_VERSION, commit: SOFTWARE_COMMIT ?? '' }, 1);
    this.addQueues(registers);
    this.addDatabase(registers);
  }

  countAnswer(method: string, route: string, status: number, seconds: number): void {
    this.answers.observe({ http_request_method: method, http_route: route, http_response_status_code: status }, seconds);
  }

  private addQueues(registers: Registry[]): void {
    const open = async () => this.jobs.open().catch(() => []);
    new Gauge({
      name: 'fairpull_orders_open',
      help: 'Orders that are not done.',
      labelNames: ['queue', 'state'],
      registers,
      async collect() {
        this.reset();
        for (const { queue, state } of await open()) this.inc({ queue, state });
      },
    });
    new Gauge({
      name: 'fairpull_orders_oldest_seconds',
      help: 'How long the order has been due that waits longest to be taken up.',
      labelNames: ['queue'],
      registers,
      async collect() {
        this.reset();
        const now = Date.now();
        const waiting = (await open()).flatMap(({ queue, nextAttemptAt: at }) =>
          at === null ? [] : [{ queue, dueForS: (now - Date.parse(at)) / 1000 }],
        );
        // The longest of a queue comes last, and stays.
        waiting.sort((one, other) => one.dueForS - other.dueForS);
        for (const { queue, dueForS } of waiting) if (dueForS >= 0) this.set({ queue }, dueForS);
      },
    });
  }

  private addDatabase(registers: Registry[]): void {
    const { client } = this.database;
    new Gauge({
      name: 'fairpull_database_connections',
      help: 'Connections of all processes to the database, by what they do.',
      labelNames: ['state'],
      registers,
      async collect() {
        this.reset();
        const rows = await client.$queryRaw<{ state: string; n: number }[]>`
          SELECT replace(state, ' ', '-') AS state, count(*)::int AS n FROM pg_stat_activity
          WHERE datname = current_database() AND usename = current_user AND state IS NOT NULL GROUP BY 1`.catch(() => []);
        for (const { state, n } of rows) this.set({ state }, n);
      },
    });
    new Gauge({
      name: 'fairpull_database_up',
      help: 'Whether the database answers.',
      registers,
      async collect() {
        this.set(
          await client.$queryRaw`SELECT 1`.then(
            () => 1,
            () => 0,
          ),
        );
      },
    });
  }
}

@Controller('metrics')
class MetricsController {
  constructor(private readonly metrics: Metrics) {}

  @Get()
  @Header('Cache-Control', 'no-store')
  @Endpoint({ summary: 'Figures for monitoring.', allow: 'anyone', answer: null, mediaType: 'text/plain', isUnlimited: true })
  getMetrics(): Promise<string> {
    return this.metrics.registry.metrics();
  }
}

@Module({ controllers: [MetricsController], providers: [Metrics], exports: [Metrics] })
export class MetricsModule {}
