/**
 * The one number that the whole demo grows from. Another one gives other winters with the same accidents; with this one a
 * variant that is left out has tied for second, and the first of two winters falls though it did not change (tests/demo/story.test.ts).
 */
export const SEED = 301;

/** Variants in the catalogue of the demo; 24 to 62. */
export const VARIANT_COUNT = 60;
