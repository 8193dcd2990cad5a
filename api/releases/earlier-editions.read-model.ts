import { Injectable } from '@nestjs/common';
import type { VariantDocument } from '../contract/documents/release-documents.js';
import type { Bundle } from '../reckoning/documents/bundle.js';
import { earlierFrom, RETOLD, retoldOf } from '../reckoning/documents/retold.js';
import type { Retold } from '../reckoning/documents/retold.js';
import type { EarlierEdition } from '../reckoning/release-inputs.js';
import { ReleasesReadModel } from './releases.read-model.js';
import type { PublishedRelease } from './releases.read-model.js';

/** The release of an edition that was current at the time in question. */
export type CurrentRelease = (edition: string) => Promise<PublishedRelease | null>;

/** What the releases of the editions before tell a later one. */
@Injectable()
export class EarlierEditions {
  constructor(private readonly releases: ReleasesReadModel) {}

  /** Of current releases, newest first, one after the other: of none more is kept than what is told again. */
  async from(previous: string | null, current: CurrentRelease = (edition) => this.releases.find(edition)): Promise<EarlierEdition[]> {
    const found: EarlierEdition[] = [];
    for (let slug = previous; slug !== null;) {
      const release = await current(slug);
      if (!release) break;
      const retold = await this.retold(release);
      found.push(earlierFrom(retold, release, found.length));
      slug = retold.previousEdition;
    }
    return found;
  }

  /** A release from before it told so itself is read whole. */
  private async retold(release: PublishedRelease): Promise<Retold> {
    const told = await this.releases.document<Retold>(release, RETOLD);
    if (told) return told;
    const { outputs } = await this.releases.kept<Bundle>(release, 'bundle.json');
    return retoldOf(outputs, await this.releases.folder<VariantDocument>(release, 'documents/variants/'));
  }
}
