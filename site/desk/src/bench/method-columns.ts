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
export function columnsOf({ slug, limits }: Pick<MethodVersion, 'slug' | 'limits'>): readonly Column[] {
  if (slug === 'diameter') return [WIDE, NARROW];
  if (slug === 'linear-density') return [MASS, LENGTH];
  return limits.timeToBreakS === null ? [FORCE] : [FORCE, TIME];
}

/** Whether a row is a station along one specimen instead of a specimen. */
export const hasStations = (slug: string): boolean => slug === 'diameter';

/** What a treated specimen is called where a method has them; null where it has none. */
export function treatmentOf({ parameters }: Pick<MethodVersion, 'parameters'>, slug: string): string | null {
  if (slug === 'named-knot' || parameters.knot !== null) return 'knotted';
  return slug === 'abrasion' || parameters.abrasion !== null ? 'abraded' : null;
}
