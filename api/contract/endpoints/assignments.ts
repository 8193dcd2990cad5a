/** Requests and answers of assignments: what a tester is asked to pull. */
import { z } from 'zod';
import { slug } from '../slug.js';

export const assignmentRequest = z.strictObject({
  tester: z.uuid().describe('Id of the tester, as GET /v1/testers lists it'),
  method: slug.describe('Slug of a method that the edition is tested by'),
  spools: z.array(z.string().trim().max(20)).min(1, 'Name at least one spool').max(200).describe('Blind codes'),
  specimens: z.int().min(1).max(500).describe('Valid specimens of each spool'),
  dueOn: z.iso.date().nullable().default(null).describe('Last day; null where there is none'),
});

const assignment = {
  id: z.uuid(),
  edition: slug.describe('Slug of the edition'),
  spool: z.string().describe('Blind code'),
  method: slug.describe('Slug of the method'),
  specimens: z.int().describe('Valid specimens that are asked for'),
  dueOn: z.iso.date().nullable().describe('Last day; null where there is none'),
  handedIn: z.string().nullable().describe('Reference of what was handed in for it; null while nothing is'),
};
export const ownAssignmentsResponse = z.strictObject({
  items: z.array(z.strictObject(assignment)).describe('Of open editions, what is not handed in first, then by last day'),
  nextCursor: z.null(),
});
export const assignmentsResponse = z.strictObject({
  items: z
    .array(z.strictObject({ ...assignment, tester: z.strictObject({ id: z.uuid(), displayName: z.string() }) }))
    .describe('Of one edition, what is not handed in first, then by last day'),
  nextCursor: z.null(),
});
export const assignmentParameter = z.uuid().describe('Id of the assignment');

export type AssignmentRequest = z.infer<typeof assignmentRequest>;
export type OwnAssignment = z.infer<typeof ownAssignmentsResponse>['items'][number];
