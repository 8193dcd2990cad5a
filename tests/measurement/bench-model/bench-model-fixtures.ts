import type { BenchSeries, BenchSubmission } from '../../../api/measurement/bench-model/bench-series.js';

/** A submission of eight specimens with three per cent of spread. */
export const submission = (
  variant: string,
  value: number,
  rig: string | null,
  tester: string,
  own: Partial<BenchSubmission> = {},
): BenchSubmission => ({
  variant,
  value,
  relativeVariance: 0.03 ** 2 / 8,
  degreesOfFreedom: 200,
  rig,
  tester,
  certificates: [],
  ...own,
});

export const seriesOf = (submissions: readonly BenchSubmission[], own: Partial<BenchSeries> = {}): BenchSeries => ({
  submissions,
  reproducibility: 0.01,
  told: [],
  ...own,
});

/** Twelve variants, each on two of three rigs by two of four testers, all exactly at their value but for what the rigs add. */
export const crossed = (rigEffect: (rig: number) => number, valueOf: (i: number) => number = () => 100): BenchSubmission[] =>
  Array.from({ length: 12 }, (_, i) =>
    [i % 3, (i + 1) % 3].map((rig, k) =>
      submission(`v${String(i).padStart(2, '0')}`, valueOf(i) * (1 + rigEffect(rig)), `R${rig}`, `T${(i + k * (1 + (i % 3))) % 4}`),
    ),
  ).flat();
