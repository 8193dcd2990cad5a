import { Problem } from '../platform/errors/problem.js';
import { editionProblems } from './editions.errors.js';

export type EditionState = 'planned' | 'open' | 'closed' | 'published';

/**
 * Refuses what an edition's state does not allow.
 * @throws Problem editions/wrong-state that says where it stands and where it should
 */
export function requireState(
  edition: { readonly slug: string; readonly state: string },
  allowed: readonly EditionState[],
  wayOn = '',
): void {
  if (allowed.some((state) => state === edition.state)) return;
  throw new Problem(
    editionProblems['editions/wrong-state'],
    `Edition ${edition.slug} is ${edition.state}; this needs it to be ${allowed.join(' or ')}.${wayOn && ` ${wayOn}`}`,
  );
}
