import type { EditionDocument, HistoryPoint, VariantDocument, VariantName } from '../../contract/documents/release-documents.js';
import type { Tables } from './bundle.js';
import { keyOf } from '../results/quantity.js';
import { valueCell } from '../cells.js';
import { budgetOf } from './budgets.js';
import { publishedClaims } from '../claims/claims.js';
import { toFigure, USUAL } from './figure.js';
import { headingOf } from './release-context.js';
import type { ReleaseContext } from './release-context.js';
import { supersededIn } from './superseded-in.js';
import { withdrawnOf } from './withdrawn-document.js';
import { publishedSubmission } from './submission-document.js';

/** The page of an entry: its places, figures, claims, evidence and history. */
export function variantDocument(
  context: ReleaseContext,
  variant: VariantName,
  tables: Tables,
  corrected: ReadonlySet<string>,
): VariantDocument {
  const standing = standingIn(tables, variant.slug);
  const { excluded, incomplete, overall, rows, outcome } = standing;
  const results = [...(context.computed.results.get(variant.slug) ?? [])];
  return {
    ...headingOf(context),
    variant,
    ...overruledOf(context, variant.slug),
    outcome,
    exclusion: excluded ? exclusionWords(excluded) : null,
    missing: incomplete?.missing ?? [],
    overall: overall ? withoutVariant(overall) : null,
    categories: rows,
    figures: results.map(([, result]) => toFigure(result, USUAL[result.of.quantity])),
    evidence: results.map(([quantity, { references }]) => ({ quantity, submissions: [...references].sort() })),
    claims: publishedClaims(context, variant.slug),
    submissions: submissionsOf(context, variant.slug),
    withdrawn: withdrawnOf(context).filter((one) => one.variant === variant.slug),
    ...supersededIn(context.evidence, new Set([variant.slug])),
    spools: spoolsOf(context, variant.slug),
    budgets: budgetsOf(context, variant.slug),
    history: [...earlierHistory(context, variant.slug), historyPoint(context, variant.slug, corrected, standing)],
    siblings: context.variants.filter(({ line, slug }) => line.slug === variant.line.slug && slug !== variant.slug),
  };
}

/** The last line of its history: what this edition says of it. */
export const newestPoint = (context: ReleaseContext, { slug }: VariantName, tables: Tables, corrected: ReadonlySet<string>): HistoryPoint =>
  historyPoint(context, slug, corrected, standingIn(tables, slug));

/** What the tables say of a variant. */
function standingIn({ edition, categories }: Tables, slug: string) {
  const excluded = edition.excluded.find((entry) => entry.variant.slug === slug);
  const incomplete = edition.incomplete.find((entry) => entry.variant.slug === slug);
  const rows = categories.flatMap(({ category, rows: all }) =>
    all.filter((row) => row.variant.slug === slug).map(({ variant: _, ...row }) => ({ category, row })),
  );
  const outcome: HistoryPoint['outcome'] = excluded ? 'excluded' : incomplete ? 'incomplete' : 'placed';
  return { excluded, incomplete, overall: edition.overall.find((row) => row.variant.slug === slug), rows, outcome };
}

const submissionsOf = ({ evidence }: ReleaseContext, slug: string) =>
  evidence.submissions
    .filter((submission) => submission.variant === slug)
    .map((submission) => publishedSubmission(submission, evidence.edition.methods));

function overruledOf({ division }: ReleaseContext, slug: string): Pick<VariantDocument, 'overruled'> {
  const found = division?.overruled.find(({ variant }) => variant === slug);
  return found ? { overruled: found.reason } : {};
}

const budgetsOf = ({ computed, evidence }: ReleaseContext, slug: string): VariantDocument['budgets'] =>
  evidence.edition.scheme.rules.categories.flatMap((category) => {
    const result = computed.results.get(slug)?.get(keyOf(category));
    return result ? budgetOf(category.code, result.estimate) : [];
  });

const exclusionWords = ({ variant: _, ...exclusion }: EditionDocument['excluded'][number]) => exclusion;

const withoutVariant = ({ variant: _, ...row }: EditionDocument['overall'][number]) => row;

/** Spools of the variant that were tested in this edition. */
function spoolsOf(context: ReleaseContext, slug: string): VariantDocument['spools'] {
  const tested = new Set(context.evidence.submissions.map(({ spool }) => spool));
  return context.spools
    .filter(({ variant, code }) => variant === slug && tested.has(code))
    .map(({ code, source, obtainedOn, place, lot, reidentifications }) => ({
      code,
      source,
      obtainedOn,
      place,
      lot,
      reidentified: reidentifications.at(-1)?.reason ?? null,
    }));
}

/** History as each earlier edition told it of this variant, oldest first. */
function earlierHistory(context: ReleaseContext, slug: string): HistoryPoint[] {
  return context.earlier.flatMap(({ history }) => history.find(({ variant }) => variant === slug)?.point ?? []).reverse();
}

function historyPoint(
  context: ReleaseContext,
  variant: string,
  corrected: ReadonlySet<string>,
  { outcome, overall, rows }: ReturnType<typeof standingIn>,
): HistoryPoint {
  return {
    edition: context.evidence.edition.slug,
    ...(context.division ? { division: context.division.slug } : {}),
    revision: context.revision,
    overallPlace: overall?.place ?? null,
    outcome,
    categories: rows.map(({ category, row }) => ({
      code: category.code,
      place: row.place,
      value: row.figure.value,
      low: row.figure.low,
      high: row.figure.high,
      unit: row.figure.unit,
      trade: row.figure.trade,
      methodVersion: category.methodVersion,
      isBreak: category.comparability === 'notComparable',
      isCorrected: corrected.has(valueCell(category.code, variant)),
    })),
  };
}
