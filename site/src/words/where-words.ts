import { say } from './say.js';
import { supersededCellWords } from './superseded-words.js';

/** What a cell is of, and what of it. */
const PARTS: Readonly<Record<string, string>> = {
  overall: say`overall`,
  label: say`label`,
  reply: say`reply`,
  caveat: say`caveat`,
  place: say`place`,
  score: say`score`,
  value: say`value`,
  interval: say`interval`,
  group: say`group`,
  chance: say`chance`,
  movement: say`movement`,
  words: say`words`,
  specimens: say`specimens`,
  submissions: say`submissions`,
  testers: say`testers`,
  rigs: say`rigs`,
  content: say`content`,
};

/** The page of a variant is called by its name, any other document by its path in the release. */
function documentWords(part: string, names: ReadonlyMap<string, string>): string | null {
  const variant = names.get(/^documents\/variants\/(.+)\.json$/.exec(part)?.[1] ?? '');
  return variant === undefined ? null : say`document of ${variant}`;
}

/** Where a cell stands, in names instead of slugs: `apparent-stress, coldharl-8-pe-0-8, place` → `Apparent stress, Coldharl 8, PE 0.8, grey, place`. */
export const whereWords = (where: string, names: ReadonlyMap<string, string>): string =>
  where
    .split(', ')
    .map((part) => names.get(part) ?? PARTS[part] ?? documentWords(part, names) ?? supersededCellWords(part) ?? part)
    .join(', ');
