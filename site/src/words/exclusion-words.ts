import { say } from './say.js';
export const exclusionWords: Record<string, string> = {
  notObtainable: say`Not obtainable`,
  labelInDoubt: say`Label in doubt`,
  duplicate: say`Duplicate of another variant`,
  makersRequestRefused: say`The maker asked for it to be left out; refused`,
  interest: say`Declared interest`,
};

export const effectWords: Record<string, string> = {
  closedUp: say`Left out; the others move up`,
  shownUnplaced: say`Shown without a place; the place it would have had stands in brackets`,
};

export const erratumWords: Record<string, string> = {
  withdrawal: say`A submission was withdrawn`,
  reidentification: say`A spool was re-identified`,
  methodError: say`An error in a method`,
  catalogueError: say`An error in the catalogue`,
};

/** What would bring back a variant that is left out, by reason. */
export const bringsBackWords: Record<string, string> = {
  notObtainable: say`It comes back when a spool can be had again before an edition opens.`,
  labelInDoubt: say`It comes back when what the label says and what is on the spool are shown to agree.`,
  duplicate: say`It comes back when it is shown to be another line than the one that it repeats.`,
  makersRequestRefused: say`It comes back when its entry is no longer in dispute.`,
  interest: say`It comes back when it is tested by people without an interest in it.`,
};

/** What would bring back a variant without all its results. @param needs as its edition tells them, at least one */
export const needsWords = (needs: readonly string[]): string => say`Needed: ${needs.join('; ')}.`;
