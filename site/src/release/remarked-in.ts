import type { PublishedRemark } from '../../../api/contract/documents/remarks-document.js';

/** Slugs of the variants beside whose figures words stand. @param category its code; none for all figures */
export const remarkedIn = (remarks: readonly PublishedRemark[], category?: string): ReadonlySet<string> =>
  new Set(
    remarks
      .filter((remark) => category === undefined || remark.category === null || remark.category === category)
      .flatMap(({ variants }) => variants),
  );
