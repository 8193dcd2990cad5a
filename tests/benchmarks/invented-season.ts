import { moderatedVariances } from '../../api/measurement/consensus/moderated-variances.js';
import type { BenchSeries, BenchSubmission, ToldSpread } from '../../api/measurement/bench-model/bench-series.js';
import { normalDeviate } from '../../api/measurement/random/normal-deviate.js';
import type { RandomStream } from '../../api/measurement/random/random-stream.js';
import { tDeviate } from '../../api/measurement/random/t-deviate.js';
import { mean } from '../../api/measurement/summary/mean.js';
import { standardDeviation } from '../../api/measurement/summary/standard-deviation.js';

/** An invented season whose truth is known: what rigs, testers, spools and specimens do. */
export interface Season {
  readonly entries: number;
  readonly rigs: number;
  readonly testers: number;
  readonly rigSd: number;
  readonly testerSd: number;
  readonly submissionSd: number;
  /** the first rig, or the first tester, is off by that much and the others by nothing */
  readonly rigShift: number;
  readonly testerShift: number;
  readonly specimens: (random: RandomStream) => number;
  readonly cv: number;
  /** degrees of freedom of a reading: Infinity for normal ones */
  readonly readingDegrees: number;
  /** share of the entries with one submission; the others have two */
  readonly singleShare: number;
  readonly told: readonly ToldSpread[];
  /** seasons before it, which tell of spreads: what was otherwise in each */
  readonly before: readonly Partial<Season>[];
  /** relative spread of the entries' true values; 0 for equal ones */
  readonly spread: number;
  /** how far one group of equal entries lies ahead of the next, and how many a group holds */
  readonly steps?: { readonly by: number; readonly size: number };
}

export const PLAIN: Season = {
  entries: 30,
  rigs: 3,
  testers: 5,
  rigSd: 0,
  testerSd: 0,
  submissionSd: 0,
  rigShift: 0,
  testerShift: 0,
  specimens: () => 8,
  cv: 0.031,
  readingDegrees: Infinity,
  singleShare: 0,
  told: [],
  before: [],
  spread: 0,
};

/** True values about 100 that differ as the season says. */
export const truthOf = ({ entries, spread, steps }: Season, random: RandomStream): number[] =>
  Array.from({ length: entries }, (_, i) =>
    steps ? 100 * (1 + steps.by) ** Math.floor(i / steps.size) : 100 * (1 + spread * normalDeviate(random)),
  );

/** As the method states it. */
export const REPRODUCIBILITY = 0.01;

const pick = (count: number, random: RandomStream): number => Math.floor(random.nextUniform() * count);

/** One measured season: rigs, testers, spools and specimens are new, the truth is what is handed in. */
export function measureSeason(season: Season, truth: readonly number[], random: RandomStream): BenchSeries {
  const rigs = Array.from({ length: season.rigs }, (_, r) => season.rigSd * normalDeviate(random) + (r === 0 ? season.rigShift : 0));
  const testers = Array.from(
    { length: season.testers },
    (_, t) => season.testerSd * normalDeviate(random) + (t === 0 ? season.testerShift : 0),
  );
  // A reading has the stated spread whatever its distribution.
  const readingSd = season.cv / (season.readingDegrees === Infinity ? 1 : Math.sqrt(season.readingDegrees / (season.readingDegrees - 2)));
  const raw = truth.flatMap((value, i) => {
    const single = i < Math.round(season.singleShare * season.entries);
    const first = pick(season.testers, random);
    const second = (first + 1 + pick(season.testers - 1, random)) % season.testers;
    return (single ? [first] : [first, second]).map((tester) => {
      const rig = pick(season.rigs, random);
      const effect = rigs[rig]! + testers[tester]! + season.submissionSd * normalDeviate(random);
      const readings = Array.from(
        { length: season.specimens(random) },
        () => value * (1 + effect + readingSd * tDeviate(random, season.readingDegrees)),
      );
      return { variant: `entry-${String(i).padStart(4, '0')}`, rig: `rig-${rig}`, tester: `tester-${tester}`, readings };
    });
  });
  const { moderated } = moderatedVariances(
    raw.map(({ readings }) => ({ variance: (standardDeviation(readings) / mean(readings)) ** 2, degreesOfFreedom: readings.length - 1 })),
  );
  const submissions = raw.map(({ readings, ...submission }, s): BenchSubmission => ({
    ...submission,
    value: mean(readings),
    relativeVariance: moderated[s]!.variance / readings.length,
    degreesOfFreedom: moderated[s]!.degreesOfFreedom,
    certificates: [],
  }));
  return { submissions, reproducibility: REPRODUCIBILITY, told: season.told };
}
