/** What is compared within an edition: the edition itself, or each of its divisions by itself. Pure. */
import { partOfFit } from '../../measurement/bench-model/part-of-fit.js';
import { sha256 } from '../../platform/identifiers/identifiers.js';
import { canonicalJson } from '../canonical-json.js';
import { settled } from './release-context.js';
import type { FittedContext, ReleaseContext } from './release-context.js';
import type { ComparedEvidence } from '../evidence/edition-evidence.js';
import type { EarlierEdition } from '../release-inputs.js';
import { certaintyOf } from '../standings/certainty.js';
import { standingsOf } from '../standings/compute-edition.js';
import type { EditionResults } from '../results/results.js';

/** Ranks what may be compared: one context for an edition with one division, else one a division, in the order of the editor. */
export function compare(context: FittedContext): ReleaseContext[] {
  const { edition } = context.evidence;
  if (!edition.divisions) return [ranked(context, { ...context.evidence, edition }, context.computed, {})];
  const { divisions, scheme: _, ...whole } = edition;
  return divisions.map((division) => {
    const own = new Set(division.variants);
    const entries = whole.entries.filter(({ variant }) => own.has(variant));
    const evidence = {
      ...context.evidence,
      edition: { ...whole, scheme: division.scheme, entries },
      submissions: context.evidence.submissions.filter(({ variant }) => own.has(variant)),
    };
    const earlier = context.earlier.map((one) => earlierWithin(one, division.slug));
    return { ...ranked({ ...context, earlier }, evidence, within(context.computed, own), { division: division.slug }), division };
  });
}

/** @param seed goes into the seed of the draws beside the readings and the scheme */
function ranked(context: FittedContext, evidence: ComparedEvidence, results: EditionResults, seed: object): ReleaseContext {
  const compared = { ...results, ...evidence };
  const computed = { ...compared, standings: standingsOf(compared) };
  return {
    ...context,
    evidence,
    computed: settled(computed),
    certainty: certaintyOf(computed, sha256(canonicalJson({ ...seededBy(evidence), ...seed }))),
  };
}

/** What the draws are seeded by: every counted reading by its submission, and the scheme. Nobody can choose it without changing a reading. */
const seededBy = ({ edition, submissions }: ComparedEvidence) => ({
  edition: edition.slug,
  scheme: edition.scheme.rules,
  submissions: submissions.map(({ reference, specimens }) => ({
    reference,
    specimens: specimens.map(({ trace: _, ...specimen }) => specimen),
  })),
});

/** What a division sees of results that are fitted over the whole edition: those of its own entries. */
const within = (results: EditionResults, own: ReadonlySet<string>): EditionResults => ({
  ...results,
  results: only(results.results, own),
  // Draws are made of what is fitted: those of other divisions would be as many more, and enter nothing.
  fits: Object.fromEntries(Object.entries(results.fits).map(([key, fit]) => [key, partOf(fit, own)])),
  besideTable: new Map([...results.besideTable].map(([key, tails]) => [key, only(tails, own)])),
});

type Fit = EditionResults['fits'][string];

const partOf = (fit: Fit, own: ReadonlySet<string>): Fit => (fit.kind === 'fitted' ? partOfFit(fit, (variant) => own.has(variant)) : fit);

const only = <T>(all: ReadonlyMap<string, T>, own: ReadonlySet<string>): ReadonlyMap<string, T> =>
  new Map([...all].filter(([variant]) => own.has(variant)));

/** Places compare with those of the same division alone; values with all that were measured before. */
function earlierWithin(earlier: EarlierEdition, slug: string): EarlierEdition {
  const { divisions, ...whole } = earlier;
  const same = divisions?.find((division) => division.slug === slug);
  return {
    ...whole,
    overall: same?.overall ?? [],
    categories: same?.categories ?? whole.categories.map((category) => ({ ...category, rows: [] })),
  };
}
