import { channel } from 'node:diagnostics_channel';

/** Size of a picture in pixels: large enough to be shown large, and little work where there are ten thousand. */
export const PICTURE = { width: 600, height: 315 };

/** What is shown where a page is shared. */
export interface Picture {
  /** Where it stands on the site, e.g. `/pictures/editions/2026.png`. */
  address: string;
  house: string;
  title: string;
  lines: string[];
  isDemo: boolean;
  /** The span of places that the evidence allows, drawn below the words. */
  span: { low: number; place: number; high: number; of: number } | null;
}

// Pages are rendered from a bundle, whose modules are not those of the configuration; they meet in a channel of the process.
export const ordered = channel('picture');

/** Orders a picture; it is drawn while pages are rendered. */
export const orderPicture = (picture: Picture): void => ordered.publish(picture);
