export const SUBMISSION_STATES = ['draft', 'submitted', 'accepted', 'returned', 'refused', 'withdrawn'] as const;
export type SubmissionState = (typeof SUBMISSION_STATES)[number];
