/** Size of a picture in pixels, as those who show shared pages ask for it (common practice). */
export const PICTURE = { width: 1200, height: 630 };

/** What is shown where a page is shared. */
export interface Picture {
  /** Where it stands on the site, e.g. `/pictures/editions/2026.png`. */
  address: string;
  house: string;
  title: string;
  lines: string[];
  /** What stands at the foot: that figures are invented; empty where they are not. */
  mark: string;
  /** The first of a table with their values; ends of interval and dot in percent of the room that they are drawn in. */
  rows: { name: string; value: string; low: number | null; dot: number; high: number | null }[];
  /** The span of places that the evidence allows, drawn below the words. */
  span: { low: number; place: number; high: number; of: number } | null;
}
