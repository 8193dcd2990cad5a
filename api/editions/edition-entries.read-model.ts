import { Injectable } from '@nestjs/common';
import { CatalogueReadModel } from '../catalogue/catalogue.read-model.js';

/** Puts beside entries what decides on their divisions, which the catalogue keeps. */
@Injectable()
export class EditionEntries {
  constructor(private readonly catalogue: CatalogueReadModel) {}

  /** Entries with their variants, by the slugs of these. */
  async withVariants<Entry extends { readonly variantId: string }>(entries: readonly Entry[]) {
    const variants = await this.catalogue.dividedBy(entries.map(({ variantId }) => variantId));
    return entries
      .map((entry) => ({ ...entry, variant: variants.of(entry.variantId) }))
      .sort((one, other) => (one.variant.slug < other.variant.slug ? -1 : 1));
  }
}
