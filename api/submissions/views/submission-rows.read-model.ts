/** What is read of a submission's own tables for the screens, and the answer that is made of it and of what others keep. */
import type { SubmissionResponse, SubmissionSummary } from '../../contract/endpoints/submissions.js';
import type { SubmissionState } from '../../contract/submission-states.js';
import type { Prisma } from '../../platform/database/generated/client.js';
import type { Actor } from '../../platform/http/access.js';
import type { AreaRule } from '../../readings/submission-figures.js';
import type { PartsOfRevision } from './revision-parts.read-model.js';
import type { NamesOfSubmission } from './submission-names.read-model.js';
import { figuresForTester, toFullFinding, toSpecimenAnswer, toTesterFinding } from './submission-view.js';

export const SUMMARY = {
  revisions: { orderBy: { number: 'desc' }, take: 1, select: { id: true, handedInAt: true } },
} satisfies Prisma.SubmissionInclude;

export const DETAIL = {
  revisions: {
    orderBy: { number: 'desc' },
    take: 1,
    include: {
      instruments: true,
      specimens: { include: { readings: { orderBy: [{ role: 'asc' }, { station: 'asc' }] } }, orderBy: { number: 'asc' } },
    },
  },
} satisfies Prisma.SubmissionInclude;

type SummaryRow = Prisma.SubmissionGetPayload<{ include: typeof SUMMARY }>;
export type DetailRow = Prisma.SubmissionGetPayload<{ include: typeof DETAIL }>;

/** What others keep of a submission. */
export interface Beside {
  readonly names: NamesOfSubmission;
  /** Null for a draft. */
  readonly parts: PartsOfRevision | null;
  readonly reviews: SubmissionResponse['reviews'];
  readonly queries: SubmissionResponse['queries'];
  readonly withdrawal: SubmissionResponse['withdrawal'];
}

export const toSummary = (row: SummaryRow, { edition, spool, method, tester }: NamesOfSubmission): SubmissionSummary => ({
  reference: row.reference,
  edition,
  spool,
  method,
  benchDay: row.benchDay.toISOString().slice(0, 10),
  state: row.state as SubmissionState,
  revision: row.revision,
  version: row.version,
  tester,
  handedInAt: row.revisions[0]?.handedInAt.toISOString() ?? null,
});

/** What the actor may see of it: a tester of the own submission less than a reviewer. */
export function toDetail(actor: Actor, row: DetailRow, { names, parts, reviews, queries, withdrawal }: Beside): SubmissionResponse {
  const revision = row.revisions[0];
  const isOwn = row.testerId === actor.accountId;
  return {
    ...toSummary(row, names),
    ...toBench(revision, parts),
    figures: toFigures(revision?.figures, names.areaFrom, isOwn),
    findings: (parts?.findings ?? []).flatMap(({ id, detail, resolution }) =>
      isOwn ? toTesterFinding(id, detail) : [toFullFinding(id, detail, resolution)],
    ),
    reviews,
    queries,
    withdrawal,
    draft: row.draft as Record<string, unknown> | null,
  };
}

type Bench = Pick<
  SubmissionResponse,
  | 'zone'
  | 'temperature'
  | 'temperatureC'
  | 'humidityPercent'
  | 'hasSeenLabel'
  | 'isBlind'
  | 'note'
  | 'fewerBecause'
  | 'instruments'
  | 'specimens'
>;

const toBench = (revision: DetailRow['revisions'][number] | undefined, parts: PartsOfRevision | null): Bench => ({
  zone: revision?.zone ?? null,
  temperature: revision ? { text: revision.temperatureText, unit: revision.temperatureUnit } : null,
  temperatureC: revision?.temperatureC.toFixed() ?? null,
  humidityPercent: revision?.humidityPercent.toFixed() ?? null,
  hasSeenLabel: revision?.hasSeenLabel ?? null,
  isBlind: revision?.isBlind ?? null,
  note: revision?.note ?? null,
  fewerBecause: revision?.fewerBecause ?? null,
  instruments: parts?.instruments ?? [],
  specimens: (parts?.specimens ?? []).map(toSpecimenAnswer),
});

function toFigures(figures: Prisma.JsonValue | undefined, areaFrom: AreaRule, isOwn: boolean): SubmissionResponse['figures'] {
  if (!figures) return null;
  return isOwn ? figuresForTester(figures as object, areaFrom) : (figures as Record<string, unknown>);
}
