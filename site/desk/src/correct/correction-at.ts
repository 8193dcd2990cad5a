export const SUBJECT_KINDS = ['maker', 'line', 'variant', 'spool', 'instrument'] as const;
export type SubjectKind = (typeof SUBJECT_KINDS)[number];

export const isSubjectKind = (kind: string): kind is SubjectKind => SUBJECT_KINDS.includes(kind as SubjectKind);
/** Where a row is corrected. */
export const correctionAt = (kind: SubjectKind, key: string): string => `/desk/correct/?kind=${kind}&key=${encodeURIComponent(key)}`;
