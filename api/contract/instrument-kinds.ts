import { UNITS } from '../measurement/units/unit-table.js';
import type { Dimension } from '../measurement/units/unit-table.js';

/** What the range and the resolution of each kind of instrument are stated in; an abrader's is the load of its tensioning weight. */
export const DIMENSION_OF_KIND = {
  forceGauge: 'force',
  loadFrame: 'force',
  micrometer: 'length',
  opticalGauge: 'length',
  balance: 'mass',
  lengthMeasure: 'length',
  abrader: 'force',
} as const satisfies Record<string, Dimension>;

export type InstrumentKind = keyof typeof DIMENSION_OF_KIND;

export const INSTRUMENT_KINDS = Object.keys(DIMENSION_OF_KIND) as [InstrumentKind, ...InstrumentKind[]];

/** Units that some kind of instrument is stated in. */
export const INSTRUMENT_UNITS: readonly string[] = Object.entries(UNITS).flatMap(([symbol, { dimension }]) =>
  Object.values<Dimension>(DIMENSION_OF_KIND).includes(dimension) ? [symbol] : [],
);

/** Kinds of instrument that pull, which control pulls watch. */
export const RIG_KINDS: readonly string[] = ['forceGauge', 'loadFrame'] satisfies InstrumentKind[];

/** Number and unit as entered. */
export interface Entered {
  readonly text: string;
  readonly unit: string;
}
