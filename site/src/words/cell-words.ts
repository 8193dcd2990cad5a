import { say } from './say.js';
import type { CellGroup } from '../../../api/contract/cell-groups.js';

/** What changed, by what readers care about first. */
export const cellWords: Record<CellGroup, string> = {
  places: say`Places and scores`,
  values: say`Values`,
  intervals: say`Intervals`,
  chances: say`Groups and chances`,
  movement: say`Movement`,
  claims: say`Label claims`,
  words: say`Caveats, replies, and what the house says of itself`,
  evidence: say`Evidence behind the figures`,
  record: say`Put right on record after results rested on it`,
  documents: say`Documents that say something else, by their digest`,
};
