/**
 * Releases of format 1 held their figures by fixed names, for then a quantity was of one method. Their keys since: the codes are those
 * that the series of these methods were given when versions began to state them.
 */
const KEYS: Readonly<Record<string, string>> = {
  breakingForce: 'breakingForce/straight-pull/untreated',
  diameter: 'diameter/diameter/outline',
  outOfRoundness: 'outOfRoundness/diameter/outline',
  linearDensity: 'linearDensity/linear-density/mass',
  apparentStress: 'apparentStress/straight-pull/untreated/diameter/outline',
  knotRetention: 'retention/named-knot/knotted',
  abrasionRetention: 'retention/abrasion/abraded',
  strengthHonesty: 'strengthHonesty/straight-pull/untreated',
};

/** The key of a quantity that an earlier release names, whatever its format. */
export const keyNow = (quantity: string): string => KEYS[quantity] ?? quantity;
