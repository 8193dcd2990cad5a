/** What a reviewer makes of a submission. */
export const DECISIONS = ['accepted', 'returned', 'refused'] as const;
export type Decision = (typeof DECISIONS)[number];

/** Kinds of questions; which of them it is tells nothing of size or sign. */
export const QUESTION_KINDS = ['reading', 'unit', 'condition', 'identity', 'apparatus', 'other'] as const;
