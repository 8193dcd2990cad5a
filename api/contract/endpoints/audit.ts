import { z } from 'zod';
import { pageCursor, pageLimit } from '../page-query.js';

export const auditQuery = z.strictObject({
  limit: pageLimit(),
  cursor: pageCursor,
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
  objectName: z.string().nullable().describe('What it was called when it was put on record; null where it has no name of its own'),
  before: z.unknown().describe('The object before; null where it was not there or is not told'),
  after: z.unknown().describe('The object after, or what was decided about it; null where nothing is told'),
});
export const auditResponse = z.strictObject({ items: z.array(auditEventResponse), nextCursor: z.string().nullable() });

export type AuditQuery = z.infer<typeof auditQuery>;
