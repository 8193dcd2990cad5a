import { say } from './say.js';
const KINDS: Record<string, string> = {
  forceGauge: say`force gauge`,
  loadFrame: say`load frame`,
  micrometer: say`micrometer`,
  opticalGauge: say`optical gauge`,
  balance: say`balance`,
  lengthMeasure: say`length measure`,
  abrader: say`abrader`,
};

/** A kind of instrument in words; an unknown one, from a later version of the program, shows as it is written. */
export const instrumentWords = (kind: string): string => KINDS[kind] ?? kind;

/** Id of the row that tells of an instrument and its certificates. */
export const instrumentRow = (code: string): string => `i-${code.toLowerCase()}`;
