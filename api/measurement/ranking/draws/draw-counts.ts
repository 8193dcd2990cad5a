/** How often is drawn: what chances, places and plans rest on. */

/** For the places of an edition; fewer leave the second digit of a chance to chance (JCGM 101 asks for more than a hundred times 1/(1 − level)). */
export const FEWEST_DRAWS = 10_000;
/** For the weights that a reader might choose. */
export const WEIGHT_DRAWS = 10_000;
/** For each season that a plan plays through. */
export const PLAN_DRAWS = 1000;
/** That the spread of score differences is taken from; it only scales the comparison, the critical value comes from all draws. */
export const DRAWS_FOR_SPREAD = 2000;
