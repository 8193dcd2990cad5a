export const exclusionWords: Record<string, string> = {
  notObtainable: 'Not obtainable',
  labelInDoubt: 'Label in doubt',
  duplicate: 'Duplicate of another variant',
  makersRequestRefused: 'The maker asked for it to be left out; refused',
  interest: 'Declared interest',
};

export const effectWords: Record<string, string> = {
  closedUp: 'Left out; the others move up',
  shownUnplaced: 'Shown without a place; the place it would have had stands in brackets',
};

export const erratumWords: Record<string, string> = {
  withdrawal: 'A submission was withdrawn',
  reidentification: 'A spool was re-identified',
  methodError: 'An error in a method',
  catalogueError: 'An error in the catalogue',
};

/** What would bring back a variant that is left out, by reason. */
export const bringsBackWords: Record<string, string> = {
  notObtainable: 'It comes back when a spool can be had again before an edition opens.',
  labelInDoubt: 'It comes back when what the label says and what is on the spool are shown to agree.',
  duplicate: 'It comes back when it is shown to be another line than the one that it repeats.',
  makersRequestRefused: 'It comes back when its entry is no longer in dispute.',
  interest: 'It comes back when it is tested by people without an interest in it.',
};

/** What would bring back a variant without all its results. @param missing names of the categories, at least one */
export const missingWords = (missing: readonly string[]): string =>
  `A result in ${missing.join(' and ')}, accepted by a second person, brings it back.`;
