import type { Entered, InstrumentKind } from '../../contract/instrument-kinds.js';

/** An instrument with its certificates, oldest first, as results take it. */
export interface InstrumentEvidence {
  readonly code: string;
  readonly kind: InstrumentKind;
  readonly name: string;
  readonly capacity: Entered;
  readonly resolution: Entered;
  readonly calibrations: readonly {
    readonly certificate: string;
    readonly validFrom: string;
    readonly validUntil: string;
    readonly correctionPercent: string;
    readonly expandedUncertaintyPercent: string;
    readonly coverageFactor: string;
  }[];
}
