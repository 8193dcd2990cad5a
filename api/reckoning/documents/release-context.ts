import type { Certainty } from '../standings/certainty.js';
import { computeEdition } from '../standings/compute-edition.js';
import type { ComputedEdition, ComputedResults } from '../standings/compute-edition.js';
import { FORMAT_VERSION } from '../../contract/documents/release-documents.js';
import type { VariantName } from '../../contract/documents/release-documents.js';
import type { ComparedEvidence, DivisionEvidence } from '../evidence/edition-evidence.js';
import { spreadsBefore } from '../rigs/season-spreads.js';
import type { ReleaseInputs } from '../release-inputs.js';
import type { WithFits } from '../results/eligibility.js';

/** The inputs of a release with the results that follow from them. */
export interface EditionContext extends ReleaseInputs {
  readonly computed: Settled<ComputedResults>;
}

/** The same with what the model of the bench found: it is large, and needed only until places are drawn. */
export interface FittedContext extends EditionContext {
  readonly computed: ComputedResults;
}

/** What documents are made of: of a fit no more than whether there is one. */
export type Settled<Results extends { readonly fits: object }> = Omit<Results, 'fits'> & WithFits;

/** What is compared: the edition itself, or one of its divisions, with the standings and how sure they are. */
export interface ReleaseContext extends EditionContext {
  readonly evidence: ComparedEvidence;
  readonly computed: Settled<ComputedEdition>;
  readonly certainty: Certainty;
  /** Absent where the edition has one division. */
  readonly division?: DivisionEvidence;
}

/** Computes the results of an edition, with what those before found of rigs, testers and spools. */
export const contextOf = (inputs: ReleaseInputs): FittedContext => ({
  ...inputs,
  computed: computeEdition(inputs.evidence, spreadsBefore(inputs.earlier)),
});

/** Lets go of what the model found. */
export const settled = <Results extends ComputedResults | ComputedEdition>(computed: Results): Settled<Results> => ({
  ...computed,
  fits: Object.fromEntries(Object.entries(computed.fits).map(([key, { kind }]) => [key, { kind }])),
});

type Headed = Pick<ReleaseInputs, 'house' | 'isDemo' | 'revision' | 'publishedAt' | 'evidence'> & Pick<ReleaseContext, 'division'>;

/** Heading that every document carries. */
export const headingOf = ({ house, isDemo, revision, publishedAt, evidence: { edition }, division }: Headed) => ({
  formatVersion: FORMAT_VERSION as typeof FORMAT_VERSION,
  house,
  isDemo,
  edition: { slug: edition.slug, name: edition.name, openedOn: edition.opensOn, closedOn: edition.closedOn ?? edition.closesOn },
  ...(division ? { division: { slug: division.slug, name: division.name } } : {}),
  revision,
  publishedAt,
});

/** Name of a variant of the edition. */
export function nameOf({ variants }: ReleaseInputs, slug: string): VariantName {
  const name = variants.find((variant) => variant.slug === slug);
  if (!name) throw new Error(`A release names a variant that is not among its inputs: ${slug}`);
  return name;
}
