import type { CheckDocument } from '../public-api/release-documents.schemas.js';
import { CHECKS } from './check-list.js';
import { LOOK_AGAIN } from './finding.js';

/** The checks for the catalogue page and the bundle of a release: what each looks for, how severe it is, the limit that it uses. */
export const CHECK_CATALOGUE: readonly CheckDocument[] = CHECKS.map(({ code, title, severity, isSealed, explains, limit }) => ({
  code,
  title,
  severity,
  explains: isSealed ? `${explains} The tester of a coded spool reads "${LOOK_AGAIN}" in its place, without numbers.` : explains,
  limit,
}));
