import type { CatalogueReadModel } from '../../catalogue/catalogue.read-model.js';
import type { Certainty } from '../../editions/certainty.js';
import type { ComputedEdition } from '../../editions/compute-standings.js';
import type { MethodVersion } from '../../methods/methods.schemas.js';
import type { CategoryDocument, EditionDocument, VariantDocument, VariantName } from '../../public-api/release-documents.schemas.js';
import type { PublishedResult } from './published-result.js';

/** What an earlier edition published, as far as a later one tells it again. */
export interface EarlierEdition {
  readonly edition: EditionDocument;
  /** Category code → its document. */
  readonly categories: ReadonlyMap<string, CategoryDocument>;
  /** Variant slug → its document. */
  readonly variants: ReadonlyMap<string, VariantDocument>;
  readonly results: readonly PublishedResult[];
}

/** Everything a release is built from. */
export interface ReleaseContext {
  readonly house: string;
  readonly isDemo: boolean;
  readonly revision: number;
  readonly publishedAt: string;
  readonly computed: ComputedEdition;
  readonly certainty: Certainty;
  readonly names: ReadonlyMap<string, VariantName>;
  readonly methods: ReadonlyMap<string, MethodVersion>;
  readonly spools: Awaited<ReturnType<CatalogueReadModel['spoolsOf']>>;
  /** Editions before this one, newest first. */
  readonly earlier: readonly EarlierEdition[];
}

/** Heading that every document carries. */
export const headingOf = ({ house, isDemo, revision, publishedAt, computed: { edition } }: ReleaseContext) => ({
  formatVersion: 1 as const,
  house,
  isDemo,
  edition: { slug: edition.slug, name: edition.name, openedOn: edition.opensOn, closedOn: edition.closesOn },
  revision,
  publishedAt,
});

/** Name of a variant of the edition. */
export function nameOf(context: ReleaseContext, variantId: string): VariantName {
  const name = context.names.get(variantId);
  if (!name) throw new Error(`A release names a variant that is not in the catalogue: ${variantId}`);
  return name;
}
