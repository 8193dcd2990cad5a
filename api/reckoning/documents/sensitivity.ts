import type { Certainty } from '../standings/certainty.js';
import type { LeftOut } from '../../measurement/ranking/order-sensitivity.js';
import { roundHalfEven } from '../../measurement/units/round-half-even.js';
import type { EditionDocument } from '../../contract/documents/release-documents.js';

type Sensitivity = NonNullable<EditionDocument['sensitivity']>;

/** A share as a percentage of one decimal. */
const percent = (share: number): string => roundHalfEven(100 * share, 1);

/** What the overall order hangs on, as published. */
export function sensitivityOf({ sensitivity }: Certainty): Sensitivity | null {
  if (!sensitivity) return null;
  const { leftOut, weights } = sensitivity;
  return {
    leftOut: leftOut.map(toPublished),
    weights: weights && {
      firstPlaces: weights.firstPlaces.map(({ id, share }) => ({ variant: id, percent: percent(share) })),
      smallestChange: weights.smallestChange && {
        variant: weights.smallestChange.id,
        weightMovedPercent: percent(weights.smallestChange.weightMoved),
      },
    },
  };
}

function toPublished({ kind, name, first, swappedPairs, swaps, dropped }: LeftOut): Sensitivity['leftOut'][number] {
  const [party, ...rest] = name.split(':');
  return {
    kind: kind === 'party' ? (party as 'tester' | 'rig') : kind,
    name: kind === 'party' ? rest.join(':') : name,
    first: [...first],
    swappedPairs,
    swaps: swaps.map(([ahead, behind]) => ({ ahead, behind })),
    dropped: [...dropped],
  };
}
