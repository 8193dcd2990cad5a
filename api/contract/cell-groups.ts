/** What a published cell is about, in the order in which readers care. */
export const CELL_GROUPS = [
  'places',
  'values',
  'intervals',
  'chances',
  'movement',
  'claims',
  'words',
  'evidence',
  'record',
  'documents',
] as const;
export type CellGroup = (typeof CELL_GROUPS)[number];

/** Last word of a cell's name → what it is about; the name of a claimed quantity stands for a claim. */
const GROUP_OF_KIND: Readonly<Record<string, CellGroup>> = {
  place: 'places',
  score: 'places',
  value: 'values',
  interval: 'intervals',
  group: 'chances',
  chance: 'chances',
  movement: 'movement',
  claim: 'claims',
  words: 'words',
  statement: 'words',
  specimens: 'evidence',
  submissions: 'evidence',
  testers: 'evidence',
  rigs: 'evidence',
  superseded: 'record',
  content: 'documents',
};

export const CELL_KINDS = Object.keys(GROUP_OF_KIND);

/** What a cell is of, from its name: "overall, <variant>, place" → place. */
export const kindOf = (where: string): string => {
  const last = where.split(', ').at(-1) ?? '';
  return last in GROUP_OF_KIND ? last : 'claim';
};
export const groupOf = (where: string): CellGroup => GROUP_OF_KIND[kindOf(where)] ?? 'claims';
