/** What is compared within an edition: the edition itself, or each of its divisions by itself. Pure. */
import { sha256 } from '../../platform/identifiers/identifiers.js';
import { canonicalJson } from '../canonical-json.js';
import type { EditionContext, ReleaseContext } from './release-context.js';
import type { DivisionEvidence } from '../evidence/edition-evidence.js';
import type { EarlierEdition } from '../release-inputs.js';
import { certaintyOf } from '../standings/certainty.js';
import { standingsOf } from '../standings/compute-edition.js';
import type { ComputedResults } from '../standings/compute-edition.js';

/** Ranks what may be compared: one context for an edition with one division, else one a division, in the order of the editor. */
export function compare(context: EditionContext): ReleaseContext[] {
  const { divisions } = context.evidence.edition;
  if (!divisions) return [ranked(context, seededBy(context))];
  return divisions.map((division) => {
    const own = { ...within(context, division), division };
    return ranked(own, { ...seededBy(context), scheme: division.scheme.rules, division: division.slug });
  });
}

function ranked<C extends EditionContext>(context: C, seed: object): C & ReleaseContext {
  const computed = { ...context.computed, standings: standingsOf(context.computed) };
  return { ...context, computed, certainty: certaintyOf(computed, sha256(canonicalJson(seed))) };
}

/** What the draws are seeded by: every counted reading by its submission, and the scheme. Nobody can choose it without changing a reading. */
const seededBy = ({ evidence: { edition, submissions } }: EditionContext) => ({
  edition: edition.slug,
  scheme: edition.scheme.rules,
  submissions: submissions.map(({ reference, specimens }) => ({
    reference,
    specimens: specimens.map(({ trace: _, ...specimen }) => specimen),
  })),
});

/** What a division sees: its own entries and their evidence under its own scheme, with results fitted over the whole edition. */
function within(context: EditionContext, { slug, scheme, variants }: DivisionEvidence): EditionContext {
  const own = new Set(variants);
  const { divisions: _, ...whole } = context.evidence.edition;
  const evidence = {
    ...context.evidence,
    edition: { ...whole, scheme, entries: whole.entries.filter(({ variant }) => own.has(variant)) },
    submissions: context.evidence.submissions.filter(({ variant }) => own.has(variant)),
  };
  const computed: ComputedResults = {
    ...context.computed,
    ...evidence,
    results: only(context.computed.results, own),
    besideTable: new Map([...context.computed.besideTable].map(([key, tails]) => [key, only(tails, own)])),
  };
  return { ...context, evidence, computed, earlier: context.earlier.map((one) => earlierWithin(one, slug, own)) };
}

const only = <T>(all: ReadonlyMap<string, T>, own: ReadonlySet<string>): ReadonlyMap<string, T> =>
  new Map([...all].filter(([variant]) => own.has(variant)));

/** Places compare with those of the same division alone; values with all that were measured before. */
function earlierWithin(earlier: EarlierEdition, slug: string, own: ReadonlySet<string>): EarlierEdition {
  const { divisions, ...whole } = earlier;
  const same = divisions?.find((division) => division.slug === slug);
  return {
    ...whole,
    overall: same?.overall ?? [],
    categories: same?.categories ?? whole.categories.map((category) => ({ ...category, rows: [] })),
    results: whole.results.filter(({ variant }) => own.has(variant)),
  };
}
