import { supersededCellWords } from './superseded-words.js';

/** Where a cell stands, in names instead of slugs: `apparent-stress, coldharl-8-pe-0-8, place` → `Apparent stress, Coldharl 8, PE 0.8, grey, place`. */
export const whereWords = (where: string, names: ReadonlyMap<string, string>): string =>
  where
    .split(', ')
    .map((part) => names.get(part) ?? supersededCellWords(part) ?? part)
    .join(', ');
