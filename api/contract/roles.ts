/** What a person may be in a house; one person may hold several. */
export const ROLES = ['tester', 'reviewer', 'editor', 'admin'] as const;
export type Role = (typeof ROLES)[number];
