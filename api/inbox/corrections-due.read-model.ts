import { Injectable } from '@nestjs/common';
import { SpoolRows } from '../catalogue/spools/spool-rows.read-model.js';
import { DecisionsReadModel } from '../decisions/decisions.read-model.js';
import { EditionsReadModel } from '../editions/editions.read-model.js';
import { SupersededRows } from '../audit/superseded.store.js';
import { ReleaseRows } from '../releases/release-rows.read-model.js';
import { SubmissionPointers } from '../submissions/submission-pointers.read-model.js';
import { SubmissionsReadModel } from '../submissions/submissions.read-model.js';

/** Something that was put right, and when. */
interface Correction {
  /** Slug of the edition that it touches. */
  readonly edition: string;
  readonly at: Date;
}

/** Published editions of which something was withdrawn, re-identified or superseded since. */
@Injectable()
export class CorrectionsDue {
  constructor(
    private readonly releases: ReleaseRows,
    private readonly editions: EditionsReadModel,
    private readonly decisions: DecisionsReadModel,
    private readonly submissions: SubmissionsReadModel,
    private readonly pointers: SubmissionPointers,
    private readonly spools: SpoolRows,
    private readonly superseded: SupersededRows,
  ) {}

  /** Slugs. */
  async due(): Promise<string[]> {
    const current = await this.releases.current();
    const [first] = current.map(({ publishedAt }) => publishedAt).sort((one, other) => one.getTime() - other.getTime());
    if (!first) return [];
    const slugs = await this.editions.slugs(current.map(({ editionId }) => editionId));
    const made = [...(await this.withdrawn(first, slugs)), ...(await this.reidentified(first, slugs)), ...(await this.putRight(first))];
    return current
      .filter(({ editionId, publishedAt }) => made.some(({ edition, at }) => edition === slugs.of(editionId) && at > publishedAt))
      .map(({ editionId }) => slugs.of(editionId))
      .sort();
  }

  private async withdrawn(since: Date, slugs: ReadonlyMap<string, string>): Promise<Correction[]> {
    const withdrawals = await this.decisions.withdrawnSince(since);
    const known = await this.submissions.known(withdrawals.map(({ submissionId }) => submissionId));
    return withdrawals.map(({ submissionId, at }) => ({ edition: slugs.get(known.of(submissionId).editionId) ?? '', at }));
  }

  private async reidentified(since: Date, slugs: ReadonlyMap<string, string>): Promise<Correction[]> {
    const changes = await this.spools.reidentifiedSince(since);
    const accepted = await this.pointers.acceptedOn(changes.map(({ spoolId }) => spoolId));
    return changes.flatMap(({ spoolId, at }) =>
      accepted.filter((one) => one.spoolId === spoolId).map(({ editionId }) => ({ edition: slugs.get(editionId) ?? '', at })),
    );
  }

  private async putRight(since: Date): Promise<Correction[]> {
    return (await this.superseded.since(since)).flatMap(({ rested, at }) =>
      rested.editions.map((edition) => ({ edition, at: new Date(at) })),
    );
  }
}
