import type { CategoryDocument, CategoryRow } from '../../../api/contract/documents/release-documents.js';

const MOST_SHOWN = 5;

/** The placed rows of a category that the front page shows. */
export const firstFive = ({ rows }: CategoryDocument): CategoryRow[] => rows.filter(({ place }) => place !== null).slice(0, MOST_SHOWN);
