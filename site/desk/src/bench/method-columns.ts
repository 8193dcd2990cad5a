import type { ReadingRole } from '../../../../api/contract/submission-content.js';
import type { MethodVersion } from '../../../../api/contract/endpoints/methods.js';

export interface Column {
  readonly role: ReadingRole;
  readonly label: string;
  /** Units that a bench reads it in, the likeliest first. */
  readonly units: readonly string[];
}

const FORCE: Column = { role: 'breakingForce', label: 'Force', units: ['N', 'kN', 'lbf', 'kgf', 'gf', 'ozf'] };
const TIME: Column = { role: 'timeToBreak', label: 'Time', units: ['s'] };
const WIDE: Column = { role: 'wideDiameter', label: 'Widest', units: ['mm', 'in', 'µm'] };
const NARROW: Column = { role: 'narrowDiameter', label: 'Narrowest', units: ['mm', 'in', 'µm'] };
const MASS: Column = { role: 'mass', label: 'Mass', units: ['g', 'mg', 'gr'] };
const LENGTH: Column = { role: 'length', label: 'Length', units: ['m', 'yd'] };

/** What a method reads of each row, in the order in which it is read. */
export function columnsOf({ series, limits }: Pick<MethodVersion, 'series' | 'limits'>): readonly Column[] {
  const kind = series[0]?.kind;
  if (kind === 'diameterAlongStations') return [WIDE, NARROW];
  if (kind === 'linearDensity') return [MASS, LENGTH];
  return limits.timeToBreakS === null ? [FORCE] : [FORCE, TIME];
}

/** Whether a row is a station along one specimen instead of a specimen. */
export const hasStations = ({ series }: Pick<MethodVersion, 'series'>): boolean => series[0]?.kind === 'diameterAlongStations';

const TREATED = { knot: 'knotted', abrasion: 'abraded' } as const;

/** What a treated specimen is called where a method has them; null where it has none. */
export function treatmentOf({ series }: Pick<MethodVersion, 'series'>): string | null {
  const treatment = series.map((one) => (one.kind === 'breakingForce' ? one.treatment : null)).find((one) => one !== null);
  return treatment ? TREATED[treatment.kind] : null;
}
