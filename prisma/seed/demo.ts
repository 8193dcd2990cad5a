import { demoVariants } from './house/variants.js';
import type { DemoVariant } from './house/variants.js';
import { SEED, VARIANT_COUNT } from './model/seed.js';
import { planSeason } from './season/season-plan.js';
import type { SeasonPlan } from './season/season-plan.js';
import { demoSeasons } from './season/seasons.js';
import { withOpenEnds } from './season/open-season.js';

/** The whole demo: the North Quay Line Trials, invented from one number. */
export interface Demo {
  readonly seed: number;
  readonly variants: readonly DemoVariant[];
  readonly seasons: readonly SeasonPlan[];
}

/** The same seed and count give the same demo, to the last digit. */
export function inventDemo(seed = SEED, variantCount = VARIANT_COUNT): Demo {
  const variants = demoVariants(variantCount);
  const seasons = demoSeasons.map((season) => {
    const plan = planSeason(seed, season, variants);
    return season.publishedOn === null ? withOpenEnds(plan) : plan;
  });
  return { seed, variants, seasons };
}
