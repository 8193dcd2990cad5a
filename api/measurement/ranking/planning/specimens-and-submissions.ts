import type { RandomStream } from '../../random/random-stream.js';
import { randomStream } from '../../random/random-stream.js';
import { expectSeason } from './plan-season.js';
import type { SeasonBasis, SeasonDesign } from './plan-season.js';

/** Fewest specimens that tell a difference with so many submissions; null where no number of them does. */
export interface NeededSpecimens {
  readonly submissions: number;
  readonly specimens: number | null;
  readonly power: number;
}

const MOST_SUBMISSIONS = 4;
const MOST_SPECIMENS = 64;

/**
 * Specimens and submissions of each entry that tell a difference with the asked power at the table's own critical value.
 *
 * Formula: for one to four submissions the smallest number of specimens, up to 64, with `expectSeason` power ≥ the asked; halving, with the same simulated seasons for every number
 * @param design rigs and testers of the season
 * @param basis as `expectSeason`
 * @param differencePercent Δ to be told [%]
 * @param seed of the simulated seasons
 * @param power asked, in (0, 1) [1]
 * @returns one row for each number of submissions
 * @throws MeasurementError as `expectSeason`
 * @see WESTFALL-YOUNG-1993
 * @example specimensAndSubmissions({ rigs: 2, testers: 2 }, { values: [100, 120], spreads: [{ rig: 0, tester: 0, submission: 0 }], cvPercent: 3, level: 0.95 }, 10, [1, 2, 3, 4]).length // 4
 */
export function specimensAndSubmissions(
  design: Pick<SeasonDesign, 'rigs' | 'testers'>,
  basis: SeasonBasis,
  differencePercent: number,
  seed: Parameters<typeof randomStream>[0],
  power = 0.8,
): NeededSpecimens[] {
  return Array.from({ length: MOST_SUBMISSIONS }, (_, at) => {
    const submissions = at + 1;
    const stream = (): RandomStream => randomStream(seed);
    const powerOf = (specimens: number): number =>
      expectSeason({ ...design, submissions, specimens }, basis, differencePercent, stream()).power;
    const most = powerOf(MOST_SPECIMENS);
    if (!(most >= power)) return { submissions, specimens: null, power: most };
    let [low, high, reached] = [0, MOST_SPECIMENS, most];
    while (high - low > 1) {
      const middle = Math.floor((low + high) / 2);
      const found = powerOf(middle);
      if (found >= power) [high, reached] = [middle, found];
      else low = middle;
    }
    return { submissions, specimens: high, power: reached };
  });
}
