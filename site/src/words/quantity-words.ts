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

/** The name of a quantity or of what was read; an unknown one, from a later version of the program, shows as it is written. */
export const quantityWords = (quantity: string): string => QUANTITIES[quantity] ?? quantity;
