import { Body, Controller, Get, Param, Post } from '@nestjs/common';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import { CurrentActor } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { ReleasesReadModel } from './releases.read-model.js';
import { releaseRequest, releaseStateResponse } from './releases.schemas.js';
import type { ReleaseRequest } from './releases.schemas.js';
import { RequestRelease } from './request-release.js';

@Controller('v1/editions/:edition/releases')
export class ReleasesController {
  constructor(
    private readonly requesting: RequestRelease,
    private readonly releases: ReleasesReadModel,
  ) {}

  @Post()
  @Endpoint({
    summary: 'Publish: orders the next revision of a closed edition.',
    allow: ['editor'],
    status: 202,
    answer: releaseStateResponse,
  })
  postRelease(@CurrentActor() actor: Actor, @Param('edition') slug: string, @Body({ schema: releaseRequest }) input: ReleaseRequest) {
    return this.requesting.run(actor, slug, input);
  }

  @Get(':revision')
  @Endpoint({ summary: 'How far a release is.', allow: ['editor'], answer: releaseStateResponse })
  async getReleaseState(@Param('edition') edition: string, @Param('revision') revision: string) {
    const release = /^\d{1,6}$/.test(revision) ? await this.releases.state(edition, Number(revision)) : null;
    if (!release) throw new Problem(platformProblems['request/not-found'], `Edition ${edition} has no revision ${revision}.`);
    return { edition, revision: Number(revision), state: release.state, digest: release.digest };
  }
}
