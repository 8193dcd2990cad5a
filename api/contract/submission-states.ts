export const SUBMISSION_STATES = ['draft', 'submitted', 'accepted', 'returned', 'refused', 'takenBack', 'withdrawn'] as const;
export type SubmissionState = (typeof SUBMISSION_STATES)[number];
