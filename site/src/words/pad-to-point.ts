const FIGURE_SPACE = '\u2007';
const PUNCTUATION_SPACE = '\u2008';

const placesOf = (value: string) => value.split('.')[1]?.length ?? 0;

/** The most decimals among the values of a column. */
export function mostPlaces(values: readonly string[]): number {
  return Math.max(0, ...values.map(placesOf));
}

/** Blanks that bring the decimal point of a right-aligned value under those of its column; the value itself stays as published. */
export function padToPoint(value: string, places: number): string {
  const missing = places - placesOf(value);
  if (missing <= 0) return '';
  return (value.includes('.') ? '' : PUNCTUATION_SPACE) + FIGURE_SPACE.repeat(missing);
}
