import { Body, Controller, Delete, Get, Param, Post } from '@nestjs/common';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import { CurrentActor } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { Jobs } from '../platform/jobs/jobs.js';
import { CallOffRelease } from './publication/call-off-release.js';
import { PUBLISH_RELEASE } from './publication/release-orders.js';
import { PublishedReleases } from './published-releases.read-model.js';
import { ReleasesReadModel } from './releases.read-model.js';
import { releaseParameter, releaseRequest, releaseStateResponse } from '../contract/endpoints/releases.js';
import type { ReleaseRequest } from '../contract/endpoints/releases.js';
import { RequestRelease } from './publication/request-release.js';

const REVISION = { schema: releaseParameter };

@Controller('v1/editions/:edition/releases')
export class ReleasesController {
  constructor(
    private readonly requesting: RequestRelease,
    private readonly callingOff: CallOffRelease,
    private readonly releases: ReleasesReadModel,
    private readonly jobs: Jobs,
    private readonly published: PublishedReleases,
  ) {}

  @Post()
  @Endpoint({
    summary: 'Publish: orders the next revision of a closed edition.',
    allow: ['editor'],
    status: 202,
    answer: releaseStateResponse,
    takes: 'much',
  })
  postRelease(@CurrentActor() actor: Actor, @Param('edition') slug: string, @Body({ schema: releaseRequest }) input: ReleaseRequest) {
    return this.requesting.run(actor, slug, input);
  }

  @Get(':revision')
  @Endpoint({ summary: 'How far a release is.', allow: ['editor'], answer: releaseStateResponse })
  async getReleaseState(@Param('edition') edition: string, @Param('revision', REVISION) revision: number) {
    const release = await this.releases.state(edition, revision);
    if (!release) throw new Problem(platformProblems['request/not-found'], `Edition ${edition} has no revision ${revision}.`);
    // Whoever is told that it is published finds it in the next answer, too.
    if (release.state !== 'building') await this.published.catchUp();
    const publishAt = release.publishAt?.toISOString() ?? null;
    return {
      edition,
      revision,
      state: release.state,
      digest: release.digest,
      publishAt,
      order: await this.jobs.stateOf(PUBLISH_RELEASE, release.id),
    };
  }

  @Delete(':revision')
  @Endpoint({ summary: 'Call off a release that is not published yet.', allow: ['editor'], status: 204, answer: null })
  async deleteRelease(
    @CurrentActor() actor: Actor,
    @Param('edition') edition: string,
    @Param('revision', REVISION) revision: number,
  ): Promise<void> {
    await this.callingOff.run(actor, edition, revision);
  }
}
