/** What more rigs, testers, submissions or specimens would buy in one category. Pure. */
import type { Plan } from '../../contract/endpoints/planning.js';
import { randomStream } from '../../measurement/random/random-stream.js';
import { seedFromDigest } from '../../measurement/random/seed-from-digest.js';
import { expectSeason } from '../../measurement/ranking/planning/plan-season.js';
import type { ExpectedSeason, SeasonDesign } from '../../measurement/ranking/planning/plan-season.js';
import { specimensAndSubmissions } from '../../measurement/ranking/planning/specimens-and-submissions.js';
import { roundHalfEven } from '../../measurement/units/round-half-even.js';
import type { SeasonLearnt } from './season-basis.js';

/** Plain data, so that a thread of its own can work it out. */
export interface PlanTask extends SeasonLearnt {
  readonly differencePercent: number;
  /** SHA-256 of what it was learnt from, hexadecimal: the same question has the same answer. */
  readonly digest: string;
}

type Answer = Pick<Plan, 'season' | 'expected' | 'alternatives' | 'needed'>;

const ALTERNATIVES: Readonly<Record<Plan['alternatives'][number]['more'], (design: SeasonDesign) => SeasonDesign>> = {
  rig: (design) => ({ ...design, rigs: design.rigs + 1 }),
  tester: (design) => ({ ...design, testers: design.testers + 1 }),
  submission: (design) => ({ ...design, submissions: design.submissions + 1 }),
  specimens: (design) => ({ ...design, specimens: 2 * design.specimens }),
};

/** Simulates the season as it was, with more of each, and what tells the difference; all from one seed. */
export function planNextSeason({ design, basis, differencePercent, digest }: PlanTask): Answer {
  const seed = seedFromDigest(digest);
  const expect = (one: SeasonDesign): ExpectedSeason => expectSeason(one, basis, differencePercent, randomStream(seed));
  const asItIs = expect(design);
  return {
    season: design,
    expected: shown(asItIs),
    alternatives: (Object.keys(ALTERNATIVES) as (keyof typeof ALTERNATIVES)[]).map((more) => {
      const season = ALTERNATIVES[more](design);
      const found = expect(season);
      const error = Math.hypot(found.widthStandardError, asItIs.widthStandardError);
      return {
        more,
        season,
        expected: shown(found),
        narrowerPercent: roundHalfEven((100 * (asItIs.width - found.width)) / asItIs.width, 0),
        standardErrorPercent: roundHalfEven((100 * error) / asItIs.width, 0),
      };
    }),
    needed: specimensAndSubmissions(design, basis, differencePercent, seed).map(({ submissions, specimens, power }) => ({
      submissions,
      specimens,
      powerPercent: roundHalfEven(100 * power, 0),
    })),
  };
}

const shown = ({ width, couldBeFirst, power }: ExpectedSeason): Plan['expected'] => ({
  width: roundHalfEven(width, 1),
  couldBeFirst: roundHalfEven(couldBeFirst, 1),
  powerPercent: roundHalfEven(100 * power, 0),
});
