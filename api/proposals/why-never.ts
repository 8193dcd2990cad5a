import type { InputFault } from '../platform/errors/problem.js';

const WAYS_ON: Readonly<Record<string, string>> = {
  submitted: 'It is not decided yet: a reviewer returns or refuses it (POST /v1/submissions/{reference}/reviews).',
  returned: 'It is with its tester: a reviewer or an editor closes it with a reason (POST /v1/submissions/{reference}/closure).',
  refused: 'It is refused and counts in nothing; there is nothing to take out.',
  withdrawn: 'It is withdrawn already.',
};

/** Why a withdrawal could never be carried out; null where it can. */
export function whyNotWithdrawn(reference: string, state: string | null): InputFault | null {
  if (state === 'accepted') return null;
  const pointer = '/submission';
  if (state === null)
    return { pointer, code: 'unknown_reference', detail: `No submission has the reference "${reference}". Read it again in the list.` };
  const detail = `${reference} is ${state}; only an accepted submission is withdrawn. ${WAYS_ON[state] ?? ''}`.trim();
  return { pointer, code: 'not_accepted', detail, found: state, expected: 'accepted' };
}

/** Why a re-identification could never be carried out; null where it can. */
export function whyNotReidentified(
  spool: string,
  variant: string,
  { isNow, isKnown }: { readonly isNow: string | null; readonly isKnown: boolean },
): InputFault | null {
  if (isNow === null)
    return { pointer: '/spool', code: 'unknown_reference', detail: `No spool has the code "${spool}". Read the code on the spool again.` };
  if (!isKnown)
    return {
      pointer: '/variant',
      code: 'unknown_reference',
      detail: `No variant has the slug "${variant}". Add the variant first, or correct the slug.`,
    };
  if (isNow !== variant) return null;
  return { pointer: '/variant', code: 'unchanged', detail: `The spool is "${variant}" on record already; expected another variant.` };
}
