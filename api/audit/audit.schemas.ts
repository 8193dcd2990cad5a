import { z } from 'zod';

export const auditQuery = z.strictObject({
  limit: z.coerce.number().int().min(1).max(200).default(50),
  cursor: z.uuid().optional().describe('nextCursor of the page before'),
  objectType: z.string().optional(),
  objectId: z.string().optional(),
});

export const auditEventResponse = z.strictObject({
  id: z.uuid(),
  at: z.iso.datetime(),
  actorId: z.uuid().nullable(),
  action: z.string(),
  objectType: z.string(),
  objectId: z.string(),
  before: z.unknown().nullable(),
  after: z.unknown().nullable(),
});
export const auditResponse = z.strictObject({ items: z.array(auditEventResponse), nextCursor: z.string().nullable() });

export type AuditQuery = z.infer<typeof auditQuery>;
