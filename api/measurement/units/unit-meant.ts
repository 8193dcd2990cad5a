/** Units of mass as gauges and labels print them for a force. */
const FORCE_MEANT: Readonly<Record<string, string>> = {
  lb: 'lbf',
  lbs: 'lbf',
  pound: 'lbf',
  pounds: 'lbf',
  kg: 'kgf',
  kgs: 'kgf',
  kilo: 'kgf',
  kilos: 'kgf',
  oz: 'ozf',
};

/**
 * Offers the unit of force where one of mass was typed; it is offered, never taken.
 *
 * Formula: none, a table look-up
 * @param symbol unit symbol as entered
 * @returns a sentence with a space before it; empty where nothing is offered
 * @throws nothing
 * @see NIST-SP-811
 * @example unitMeant('lb') // ' Where a force is meant, write lbf.'
 */
export function unitMeant(symbol: string): string {
  const meant = new Map(Object.entries(FORCE_MEANT)).get(symbol.trim().toLowerCase());
  return meant === undefined ? '' : ` Where a force is meant, write ${meant}.`;
}
