import type { CellGroup } from '../../../api/contract/cell-groups.js';

/** What changed, by what readers care about first. */
export const cellWords: Record<CellGroup, string> = {
  places: 'Places and scores',
  values: 'Values',
  intervals: 'Intervals',
  chances: 'Groups and chances',
  movement: 'Movement',
  claims: 'Label claims',
  words: 'Caveats, replies, and what the house says of itself',
  evidence: 'Evidence behind the figures',
  record: 'Put right on record after results rested on it',
  documents: 'Documents that say something else, by their digest',
};
