const KINDS: Record<string, string> = {
  forceGauge: 'force gauge',
  loadFrame: 'load frame',
  micrometer: 'micrometer',
  opticalGauge: 'optical gauge',
  balance: 'balance',
  lengthMeasure: 'length measure',
  abrader: 'abrader',
};

/** A kind of instrument in words; an unknown one, from a later version of the program, shows as it is written. */
export const instrumentWords = (kind: string): string => KINDS[kind] ?? kind;

/** Id of the row that tells of an instrument and its certificates. */
export const instrumentRow = (code: string): string => `i-${code.toLowerCase()}`;
