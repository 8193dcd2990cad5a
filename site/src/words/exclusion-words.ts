import { withinList } from './locale.js';
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

/** What would bring back a result that was withdrawn. */
export const afterWithdrawalWords = say`A new submission on the spool, accepted by a second person, brings a result back.`;

/** The category that a need is in, by its code. */
const CATEGORY = / in ([a-z\d-]+)(?=$|[ :])/;

/**
 * What a variant lacks, category by category: `five specimens, one rig in knot retention (Palomar)`.
 * @param needs as its edition tells them
 * @param names what codes are called
 */
export function needsWords(needs: readonly string[], names: ReadonlyMap<string, string>): string {
  const ofCategory = Map.groupBy(needs, (need) => CATEGORY.exec(need)?.[1] ?? '');
  return [...ofCategory]
    .map(([code, own]) => {
      const place = ` in ${withinList(names.get(code) ?? code)}`;
      const counts = own.filter((need) => need.endsWith(` in ${code}`)).map((need) => need.replace(CATEGORY, ''));
      const others = own.filter((need) => !need.endsWith(` in ${code}`)).map((need) => need.replace(CATEGORY, place));
      return [...(counts.length > 0 ? [counts.join(', ') + place] : []), ...others].join('; ');
    })
    .join('; ');
}
