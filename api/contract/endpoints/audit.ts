import { z } from 'zod';

export const auditQuery = z.strictObject({
  limit: z.coerce.number().int().min(1).max(1000).default(50).describe('How many at most'),
  cursor: z.uuid().optional().describe('nextCursor of the page before'),
  actorId: z.uuid().optional().describe('Account of the person'),
  from: z.iso.date().optional().describe('First day, UTC'),
  to: z.iso.date().optional().describe('Last day, UTC'),
  objectType: z.string().optional().describe('Kind of object, e.g. submission'),
  objectId: z.string().optional().describe('What the object is called in the trail: a slug, reference or UUID'),
});

export const auditEventResponse = z.strictObject({
  id: z.uuid(),
  at: z.iso.datetime(),
  actorId: z.uuid().nullable(),
  action: z.string(),
  objectType: z.string(),
  objectId: z.string(),
  before: z.unknown().describe('The object before; null where it was not there or is not told'),
  after: z.unknown().describe('The object after, or what was decided about it; null where nothing is told'),
});
export const auditResponse = z.strictObject({ items: z.array(auditEventResponse), nextCursor: z.string().nullable() });

export type AuditQuery = z.infer<typeof auditQuery>;
