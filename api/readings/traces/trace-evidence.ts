import type { Over, Sample, TraceFigures } from './trace-figures.js';

export interface StoredTrace {
  readonly digest: string;
  readonly over: string;
  readonly sampleCount: number;
  readonly figures: unknown;
  readonly points: unknown;
}

/** A trace as screens and releases show it. */
export interface TraceEvidence {
  /** SHA-256 of the file as handed in. */
  readonly digest: string;
  readonly over: Over;
  readonly samples: number;
  readonly figures: TraceFigures;
  /** At most 64: extension [mm] or time [s], and force [N]. */
  readonly points: readonly Sample[];
}

export const toTraceEvidence = ({ digest, over, sampleCount, figures, points }: StoredTrace): TraceEvidence => ({
  digest,
  over: over as Over,
  samples: sampleCount,
  figures: figures as TraceFigures,
  points: points as Sample[],
});
