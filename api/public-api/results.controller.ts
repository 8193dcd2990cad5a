import { Controller, Get, Req, Res } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { FileStore } from '../platform/file-store/file-store.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { compressAs } from '../platform/http/headers/compress.js';
import { sha256 } from '../platform/identifiers/identifiers.js';
import { lost, PublishedReleases } from '../releases/published-releases.read-model.js';
import type { KnownRelease } from '../releases/published-releases.read-model.js';
import { RESULT_COLUMNS_IN_WORDS, resultRows, resultsCsv, resultsParquet } from './results-table.js';
import { codingFor, sendBytes, storedBytes } from './stored-bytes.js';

const CSV = 'text/csv';
const PARQUET = 'application/vnd.apache.parquet';

interface Made {
  readonly csv: Buffer;
  readonly parquet: Buffer;
}

/** All results of the current releases in one file; made when they are first asked for after a publication. */
@Controller('v1')
export class ResultsController {
  private of: readonly KnownRelease[] = [];
  private made: Promise<Made> | undefined;

  constructor(
    private readonly releases: PublishedReleases,
    private readonly files: FileStore,
  ) {}

  @Get('results.csv')
  @Endpoint({
    summary: 'All results of all editions as published last, one row a variant and category: CSV.',
    allow: 'anyone',
    answer: null,
    mediaType: CSV,
    holds: `A header row, then a row each (RFC 4180, UTF-8). ${RESULT_COLUMNS_IN_WORDS}`,
  })
  async getResultsCsv(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    await this.send(request, reply, (await this.tables()).csv, CSV);
  }

  @Get('results.parquet')
  @Endpoint({
    summary: 'All results of all editions as published last, one row a variant and category: Apache Parquet.',
    allow: 'anyone',
    answer: null,
    mediaType: PARQUET,
    holds: `Numbers as INT32 and DOUBLE, all else as text; what is empty is null. ${RESULT_COLUMNS_IN_WORDS}`,
  })
  async getResultsParquet(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    await this.send(request, reply, (await this.tables()).parquet, PARQUET);
  }

  private tables(): Promise<Made> {
    const all = this.releases.all();
    if (this.made && this.of === all) return this.made;
    const made = this.make(all.filter(({ status }) => status === 'published'));
    [this.of, this.made] = [all, made];
    // What could not be read is asked for again.
    made.catch(() => (this.made = undefined));
    return made;
  }

  private async make(current: readonly KnownRelease[]): Promise<Made> {
    const tables = await Promise.all(
      current.map(async (release) => {
        const [results, variants] = await Promise.all(['csv/results.csv', 'csv/variants.csv'].map((path) => this.read(release, path)));
        return { edition: release.edition, revision: release.revision, results: results ?? '', variants: variants ?? '' };
      }),
    );
    const rows = resultRows(tables);
    return { csv: resultsCsv(rows), parquet: resultsParquet(rows) };
  }

  private async read(release: KnownRelease, path: string): Promise<string> {
    const bytes = await this.files.read(`${release.folder}/${path}`);
    if (!bytes) throw lost(release, path);
    return bytes.toString('utf8');
  }

  private async send(request: FastifyRequest, reply: FastifyReply, bytes: Buffer, mediaType: string): Promise<void> {
    const coding = codingFor(request.raw, bytes.length, mediaType);
    const stored = storedBytes(coding === null ? bytes : await compressAs(bytes, coding), mediaType, sha256(bytes), coding);
    reply.hijack();
    sendBytes(request.raw, reply.raw, stored, 'revalidate');
  }
}
