/** What waits for somebody, by the roles that they hold. */
import { z } from 'zod';
import { ROLES } from '../roles.js';

export const INBOX_CODES = [
  'queries_open',
  'returned_to_you',
  'drafts',
  'assignments_open',
  'spools_to_pull',
  'round_robin_cells',
  'reviews_waiting',
  'doubts_open',
  'returned_to_testers',
  'proposals_open',
  'openings_due',
  'closings_due',
  'releases_due',
  'corrections_due',
  'retests_open',
  'certificates_ending',
  'invitations_open',
  'webhooks_paused',
] as const;

export const inboxItem = z.strictObject({
  code: z.enum(INBOX_CODES),
  role: z.enum(ROLES).describe('As whom it waits for you'),
  what: z.string().describe('What it is, in words'),
  count: z.int().describe('How many'),
  references: z.array(z.string()).describe('The first fifty: references, slugs, codes or ids, longest waiting first where that is known'),
  where: z.string().describe('What to do, and where'),
});
export const inboxResponse = z.strictObject({
  items: z.array(inboxItem).describe('By role; nothing that is empty'),
  nextCursor: z.null(),
});

export type InboxItem = z.infer<typeof inboxItem>;
