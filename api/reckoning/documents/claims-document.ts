import type { ClaimsDocument } from '../../contract/documents/claims-document.js';
import { publishedClaims } from '../claims/claims.js';
import { headingOf } from './release-context.js';
import type { EditionContext } from './release-context.js';

/** What every label says, beside what was measured. */
export const claimsDocument = (context: EditionContext): ClaimsDocument => ({
  ...headingOf(context),
  items: context.variants
    .map((variant) => ({ variant, claims: publishedClaims(context, variant.slug) }))
    .filter(({ claims }) => claims.length > 0),
});
