import type { Obstacle } from '../contract/obstacle.js';

/** References of submissions that keep an edition open. */
export interface Unsettled {
  readonly submitted: readonly string[];
  readonly returned: readonly string[];
  /** Accepted, with a held finding that nobody has answered. */
  readonly inDoubt: readonly string[];
}

const WAYS_ON = {
  submitted: {
    code: 'submissions_waiting',
    what: 'handed in and not decided',
    remedy: 'A reviewer who did not test it accepts, returns or refuses each: POST /v1/submissions/{reference}/reviews.',
  },
  returned: {
    code: 'submissions_returned',
    what: 'returned to their testers',
    remedy: 'The tester hands each in again, or a reviewer or an editor closes it with a reason: POST /v1/submissions/{reference}/closure.',
  },
  inDoubt: {
    code: 'submissions_in_doubt',
    what: 'accepted, with a held finding that nobody has answered',
    remedy:
      'A reviewer answers the finding: POST /v1/submissions/{reference}/findings/{id}/resolution; or one proposes the withdrawal and an editor carries it out: POST /v1/proposals.',
  },
} as const;

/** Everything that stands in the way of closing an edition, each with its way on. */
export const closingObstacles = (unsettled: Unsettled): Obstacle[] =>
  (Object.keys(WAYS_ON) as (keyof typeof WAYS_ON)[]).flatMap((kind) => {
    const references = [...unsettled[kind]];
    const { code, what, remedy } = WAYS_ON[kind];
    if (references.length === 0) return [];
    return [
      {
        code,
        what: `${references.length} submission${references.length === 1 ? '' : 's'} ${what}`,
        count: references.length,
        references,
        remedy,
      },
    ];
  });
