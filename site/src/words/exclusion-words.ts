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
