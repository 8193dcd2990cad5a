/** The one number that the whole demo grows from. Another one gives another season with the same story. */
export const SEED = 967;

/** Variants in the catalogue of the demo; any number up to 62. */
export const VARIANT_COUNT = 24;
