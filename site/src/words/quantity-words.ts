const QUANTITIES: Record<string, string> = {
  breakingForce: 'Breaking force',
  apparentStress: 'Apparent breaking stress',
  knotRetention: 'Knot retention',
  abrasionRetention: 'Abrasion retention',
  strengthHonesty: 'Measured of claimed strength',
  diameter: 'Diameter',
  outOfRoundness: 'Out-of-roundness',
  linearDensity: 'Linear density',
  tenacity: 'Tenacity',
  peNumber: 'PE number',
  timeToBreak: 'Time to break',
  wideDiameter: 'Widest diameter',
  narrowDiameter: 'Narrowest diameter',
  mass: 'Mass',
  length: 'Length',
};

/** The name of what was read or claimed; an unknown one, from a later version of the program, shows as it is written. */
export const quantityWords = (quantity: string): string => QUANTITIES[quantity] ?? quantity;

/** The name of a published quantity as its release tells it; the first releases told none, and had fixed quantities. */
export const nameOf = ({ quantity, name }: { quantity: string; name?: string | undefined }): string => name ?? quantityWords(quantity);
