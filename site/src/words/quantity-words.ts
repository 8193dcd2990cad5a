import { OF_PROGRAM } from '../languages/written-in.js';
import { say } from './say.js';

const QUANTITIES: Record<string, string> = {
  breakingForce: say`Breaking force`,
  apparentStress: say`Apparent breaking stress`,
  knotRetention: say`Knot retention`,
  abrasionRetention: say`Abrasion retention`,
  strengthHonesty: say`Measured of claimed strength`,
  diameter: say`Diameter`,
  outOfRoundness: say`Out-of-roundness`,
  linearDensity: say`Linear density`,
  tenacity: say`Tenacity`,
  peNumber: say`PE number`,
  timeToBreak: say`Time to break`,
  wideDiameter: say`Widest diameter`,
  narrowDiameter: say`Narrowest diameter`,
  mass: say`Mass`,
  length: say`Length`,
};

/** The name of what was read or claimed; an unknown one, from a later version of the program, shows as it is written. */
export const quantityWords = (quantity: string): string => QUANTITIES[quantity] ?? quantity;

/**
 * The name of a published quantity as its release tells it; the first releases told none, and had fixed quantities. On a page in another language than the program's what has a
 * name there is called by it, unless the release says more of it.
 */
export function nameOf({ quantity, name }: { quantity: string; name?: string | undefined }): string {
  const own = QUANTITIES[quantity.split('/')[0] ?? ''];
  return name === undefined || (OF_PROGRAM !== undefined && own !== undefined && !name.includes(',')) ? (own ?? name ?? quantity) : name;
}
