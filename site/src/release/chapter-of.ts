import type { Tables } from './load-release.js';

/** Id of the heading under which a table stands in the booklet. @param table code of a category, or `overall` */
export const chapterOf = ({ division }: Tables, table: string): string => `${division ? `${division.slug}.` : ''}${table}`;
