/** What is read of a submission for the screens, and the answer that is made of it. */
import type { Finding } from '../../checks/finding.js';
import type { SubmissionResponse, SubmissionSummary } from '../../contract/endpoints/submissions.js';
import type { SubmissionState } from '../../contract/submission-states.js';
import type { Prisma } from '../../platform/database/generated/client.js';
import type { Actor } from '../../platform/http/access.js';
import type { AreaRule } from '../../readings/submission-figures.js';
import { figuresForTester, toFullFinding, toSpecimenAnswer, toSpecimenInSi, toTesterFinding } from './submission-view.js';

const HEADING = {
  edition: { select: { slug: true } },
  spool: { select: { blindCode: true } },
  methodVersion: { select: { number: true, parameters: true, method: { select: { slug: true } } } },
  tester: { select: { displayName: true } },
} satisfies Prisma.SubmissionInclude;

export const SUMMARY = {
  ...HEADING,
  revisions: { orderBy: { number: 'desc' }, take: 1, select: { handedInAt: true } },
} satisfies Prisma.SubmissionInclude;

export const HANDED_IN = {
  ...HEADING,
  revisions: {
    orderBy: { number: 'desc' },
    take: 1,
    select: { handedInAt: true, findings: { orderBy: { id: 'asc' }, select: { id: true, detail: true } } },
  },
} satisfies Prisma.SubmissionInclude;

export const DETAIL = {
  ...HEADING,
  revisions: {
    orderBy: { number: 'desc' },
    take: 1,
    include: {
      instruments: { include: { instrument: { select: { code: true, kind: true } } }, orderBy: { instrument: { code: 'asc' } } },
      specimens: {
        include: { readings: { orderBy: [{ role: 'asc' }, { station: 'asc' }] }, setAside: { select: { reason: true } } },
        orderBy: { number: 'asc' },
      },
      findings: { orderBy: { id: 'asc' } },
    },
  },
  queries: { orderBy: { id: 'asc' } },
  withdrawal: true,
} satisfies Prisma.SubmissionInclude;

export const REVIEW = {
  revision: { select: { number: true, submissionId: true } },
  reviewer: { select: { displayName: true } },
} satisfies Prisma.ReviewInclude;

type SummaryRow = Prisma.SubmissionGetPayload<{ include: typeof SUMMARY }>;
type DetailRow = Prisma.SubmissionGetPayload<{ include: typeof DETAIL }>;
type ReviewRow = Prisma.ReviewGetPayload<{ include: typeof REVIEW }>;

export const toSummary = (row: SummaryRow): SubmissionSummary => ({
  reference: row.reference,
  edition: row.edition.slug,
  spool: row.spool.blindCode,
  method: { slug: row.methodVersion.method.slug, number: row.methodVersion.number },
  benchDay: row.benchDay.toISOString().slice(0, 10),
  state: row.state as SubmissionState,
  revision: row.revision,
  version: row.version,
  tester: row.tester.displayName,
  handedInAt: row.revisions[0]?.handedInAt.toISOString() ?? null,
});

/** What the actor may see of it: a tester of the own submission less than a reviewer. */
export function toDetail(actor: Actor, row: DetailRow, reviews: readonly ReviewRow[]): SubmissionResponse {
  const revision = row.revisions[0];
  const isOwn = row.testerId === actor.accountId;
  return {
    ...toSummary(row),
    ...toBench(revision),
    figures: toFigures(revision?.figures, row.methodVersion.parameters, isOwn),
    findings: (revision?.findings ?? []).flatMap(({ id, detail, resolution }) => {
      const finding = detail as unknown as Finding;
      return isOwn ? toTesterFinding(id, finding) : [toFullFinding(id, finding, resolution)];
    }),
    reviews: reviews.map(({ revision: { number }, decision, reason, at, reviewer }) => ({
      revision: number,
      decision: decision as SubmissionResponse['reviews'][number]['decision'],
      reason,
      at: at.toISOString(),
      reviewer: reviewer.displayName,
    })),
    queries: row.queries.map(({ id, revision: asked, specimens, question, askedAt, answer }) => ({
      id,
      revision: asked,
      specimens,
      question,
      askedAt: askedAt.toISOString(),
      answer,
    })),
    withdrawal: row.withdrawal && { reason: row.withdrawal.reason, at: row.withdrawal.at.toISOString() },
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

const toBench = (revision: DetailRow['revisions'][number] | undefined): Bench => ({
  zone: revision?.zone ?? null,
  temperature: revision ? { text: revision.temperatureText, unit: revision.temperatureUnit } : null,
  temperatureC: revision?.temperatureC.toFixed() ?? null,
  humidityPercent: revision?.humidityPercent.toFixed() ?? null,
  hasSeenLabel: revision?.hasSeenLabel ?? null,
  isBlind: revision?.isBlind ?? null,
  note: revision?.note ?? null,
  fewerBecause: revision?.fewerBecause ?? null,
  instruments: (revision?.instruments ?? []).map(({ instrument, certificate }) => ({ ...instrument, certificate })),
  specimens: (revision?.specimens ?? []).map((specimen) => toSpecimenAnswer(toSpecimenInSi(specimen))),
});

export const toTesterFindings = (
  findings: readonly { readonly id: string; readonly detail: Prisma.JsonValue }[],
): SubmissionResponse['findings'] => findings.flatMap(({ id, detail }) => toTesterFinding(id, detail as unknown as Finding));

function toFigures(figures: Prisma.JsonValue | undefined, parameters: Prisma.JsonValue, isOwn: boolean): SubmissionResponse['figures'] {
  if (!figures) return null;
  return isOwn
    ? figuresForTester(figures as object, (parameters as { areaFrom: AreaRule }).areaFrom)
    : (figures as Record<string, unknown>);
}
