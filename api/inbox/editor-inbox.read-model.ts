import { Injectable } from '@nestjs/common';
import { CatalogueReadModel } from '../catalogue/catalogue.read-model.js';
import type { InboxItem } from '../contract/endpoints/inbox.js';
import { EditionRows } from '../editions/edition-rows.read-model.js';
import { InstrumentsReadModel } from '../instruments/instruments.read-model.js';
import { KeyReadings } from '../audit/key-readings.store.js';
import { Clock } from '../platform/clock/clock.js';
import type { Actor } from '../platform/http/access.js';
import { ProposalsReadModel } from '../proposals/proposals.read-model.js';
import { ReleaseRows } from '../releases/release-rows.read-model.js';
import { SubmissionPointers } from '../submissions/submission-pointers.read-model.js';
import { CorrectionsDue } from './corrections-due.read-model.js';
import { DAYS_AHEAD, waiting } from './inbox-words.js';

const DAY_MS = 86_400_000;

/** What waits for an editor: proposals of others, steps of editions that are due, certificates that end. */
@Injectable()
export class EditorInbox {
  constructor(
    private readonly catalogue: CatalogueReadModel,
    private readonly submissions: SubmissionPointers,
    private readonly editions: EditionRows,
    private readonly releases: ReleaseRows,
    private readonly instruments: InstrumentsReadModel,
    private readonly corrections: CorrectionsDue,
    private readonly proposals: ProposalsReadModel,
    private readonly keyReadings: KeyReadings,
    private readonly clock: Clock,
  ) {}

  async of({ accountId }: Actor): Promise<InboxItem[]> {
    const now = this.clock.now();
    const today = new Date(now.toISOString().slice(0, 10));
    const proposals = await this.proposals.waitingFor(accountId);
    const retests = await this.retests();
    await this.keyReadings.note({ accountId }, 'retest', { codes: retests });
    const { toOpen, toClose, closed } = await this.editions.due(today);
    const ordered = await this.releases.orderedOf(closed.map(({ id }) => id));
    const uncalibrated = await this.instruments.uncalibratedOn(new Date(today.getTime() + DAYS_AHEAD * DAY_MS));
    return [
      ...waiting(
        'proposals_open',
        proposals.map(({ id }) => id),
      ),
      ...waiting('openings_due', toOpen.map(slugOf)),
      ...waiting('closings_due', toClose.map(slugOf)),
      ...waiting('releases_due', closed.filter(({ id }) => !ordered.has(id)).map(slugOf)),
      ...waiting('corrections_due', await this.corrections.due()),
      ...waiting('retests_open', retests),
      ...waiting('certificates_ending', uncalibrated),
    ];
  }

  /** Codes of spools that stand a second time and that nobody has handed in. */
  private async retests(): Promise<string[]> {
    const again = await this.catalogue.allPutBack();
    const done = await this.submissions.handedInOn(again);
    return [...(await this.catalogue.spoolCodes(again.filter((id) => !done.has(id)))).values()].sort();
  }
}

const slugOf = ({ slug }: { readonly slug: string }): string => slug;
