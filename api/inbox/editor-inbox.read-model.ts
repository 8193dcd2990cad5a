import { Injectable } from '@nestjs/common';
import { CatalogueReadModel } from '../catalogue/catalogue.read-model.js';
import type { InboxItem } from '../contract/endpoints/inbox.js';
import { KeyReadings } from '../platform/audit/key-readings.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import type { Prisma } from '../platform/database/generated/client.js';
import type { Actor } from '../platform/http/access.js';
import { ProposalsReadModel } from '../proposals/proposals.read-model.js';
import { DAYS_AHEAD, waiting } from './inbox-item.js';

const DAY_MS = 86_400_000;

/** What waits for an editor: proposals of others, steps of editions that are due, certificates that end. */
@Injectable()
export class EditorInbox {
  constructor(
    private readonly database: Database,
    private readonly catalogue: CatalogueReadModel,
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
    return [
      ...waiting(
        'proposals_open',
        proposals.map(({ id }) => id),
      ),
      ...waiting('openings_due', await this.editions({ state: 'planned', opensOn: { lte: today } })),
      ...waiting('closings_due', await this.editions({ state: 'open', closesOn: { lt: today } })),
      ...waiting('releases_due', await this.editions({ state: 'closed', releases: { none: {} } })),
      ...waiting('corrections_due', await this.corrections()),
      ...waiting('retests_open', retests),
      ...waiting('certificates_ending', await this.uncalibrated(new Date(today.getTime() + DAYS_AHEAD * DAY_MS))),
    ];
  }

  private async editions(where: Prisma.EditionWhereInput): Promise<string[]> {
    const rows = await this.database.client.edition.findMany({ where, select: { slug: true }, orderBy: { closesOn: 'asc' } });
    return rows.map(({ slug }) => slug);
  }

  /** Published editions of which something was withdrawn, re-identified or superseded since. */
  private async corrections(): Promise<string[]> {
    const rows = await this.database.client.$queryRaw<{ slug: string }[]>`
      SELECT e."slug" FROM "edition" e JOIN "release" r ON r."edition_id" = e."id" AND r."state" = 'published'
      WHERE EXISTS (SELECT 1 FROM "withdrawal" w JOIN "submission" s ON s."id" = w."submission_id"
                    WHERE s."edition_id" = e."id" AND w."at" > r."published_at")
         OR EXISTS (SELECT 1 FROM "spool_reidentification" i JOIN "submission" s ON s."spool_id" = i."spool_id"
                    WHERE s."edition_id" = e."id" AND s."state" = 'accepted' AND i."at" > r."published_at")
         OR EXISTS (SELECT 1 FROM "superseded_row" x WHERE jsonb_exists(x."rested" -> 'editions', e."slug") AND x."at" > r."published_at")
      ORDER BY e."slug"`;
    return rows.map(({ slug }) => slug);
  }

  private async retests(): Promise<string[]> {
    const rows = await this.database.client.retest.findMany({
      where: { spool: { submissions: { none: { revision: { gt: 0 } } } } },
      select: { spoolId: true },
    });
    return [...(await this.catalogue.spoolCodes(rows.map(({ spoolId }) => spoolId))).values()].sort();
  }

  private async uncalibrated(until: Date): Promise<string[]> {
    const rows = await this.database.client.instrument.findMany({
      where: { calibrations: { none: { validUntil: { gte: until } } } },
      select: { code: true },
      orderBy: { code: 'asc' },
    });
    return rows.map(({ code }) => code);
  }
}
