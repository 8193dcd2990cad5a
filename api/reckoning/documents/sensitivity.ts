import type { Certainty } from '../standings/certainty.js';
import type { LeftOut } from '../../measurement/ranking/sensitivity/order-sensitivity.js';
import { roundHalfEven } from '../../measurement/units/round-half-even.js';
import type { EditionDocument, SensitivityDocument } from '../../contract/documents/release-documents.js';
import { headingOf } from './release-context.js';
import type { ReleaseContext } from './release-context.js';

type Sensitivity = NonNullable<EditionDocument['sensitivity']>;

/** A share as a percentage of one decimal. */
const percent = (share: number): string => roundHalfEven(100 * share, 1);

/** Name of the document; releases from before there was such a one have none. */
export const SENSITIVITY = 'sensitivity.json';

/** Of an edition of many entries the whole would be larger than its standings: it stands in a document of its own. */
const MOST_ENTRIES = 20;
const MOST_SWAPS = 10;

/** All of it, in a document of its own. */
export const sensitivityDocument = (context: ReleaseContext): SensitivityDocument => ({
  ...headingOf(context),
  sensitivity: sensitivityOf(context.certainty),
});

/** What of it stands beside the standings: the entries that turn most pairs round, in their order, and the first pairs of each. */
export function sensitivityBeside(certainty: Certainty): Sensitivity | null {
  const whole = sensitivityOf(certainty);
  if (!whole) return null;
  const entries = whole.leftOut.filter(({ kind }) => kind === 'entry');
  const most = new Set(entries.toSorted((one, other) => other.swappedPairs - one.swappedPairs).slice(0, MOST_ENTRIES));
  const beside = whole.leftOut.filter((one) => one.kind !== 'entry' || most.has(one));
  return { ...whole, leftOut: beside.map((one) => ({ ...one, swaps: one.swaps.slice(0, MOST_SWAPS) })) };
}

/** What the overall order hangs on, as published. */
function sensitivityOf({ sensitivity }: Certainty): Sensitivity | null {
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
