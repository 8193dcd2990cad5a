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

/** @returns a sentence that offers the unit of force where one of mass was typed, else nothing; it is offered, never taken */
export function unitMeant(symbol: string): string {
  const meant = new Map(Object.entries(FORCE_MEANT)).get(symbol.trim().toLowerCase());
  return meant === undefined ? '' : ` Where a force is meant, write ${meant}.`;
}
