import type { CheckDocument } from '../contract/documents/release-documents.js';
import { CHECK_SET_VERSION, CHECKS } from './check-list.js';
import type { Check } from './check.js';
import { isForReviewers } from './check.js';
import { severitiesOf } from './check-settings.js';
import { LOOK_AGAIN } from './finding.js';

/** The set of checks as plain JSON: an edition pins it when it opens, a release carries it, the catalogue page shows it. */
export interface CheckSet {
  readonly version: number;
  readonly checks: readonly CheckDocument[];
}

/** @returns every check with its severity, its limits (decimal texts with units) and what it looks for, in the order of the list */
export function checkSetOf(checks: readonly Check[] = CHECKS, version: number = CHECK_SET_VERSION): CheckSet {
  return { version, checks: checks.map(toDocument) };
}

function toldToTester(check: Check): string {
  if (isForReviewers(check)) return ' Its tester is told nothing of it, for that would tell something of the spool.';
  return check.isSealed ? ` Its tester reads "${LOOK_AGAIN}" in its place, without numbers.` : '';
}

function toDocument(check: Check): CheckDocument {
  const { code, title, severity, explains, limit, limits = {}, source, example } = check;
  return {
    code,
    title,
    severity,
    severities: [...severitiesOf(check)],
    explains: `${explains}${toldToTester(check)}`,
    limit,
    limits: Object.entries(limits).map(([name, { words, value, unit, atLeast, atMost }]) => ({
      name,
      words,
      value: String(value),
      unit,
      atLeast: String(atLeast),
      atMost: String(atMost),
    })),
    source,
    example,
  };
}
