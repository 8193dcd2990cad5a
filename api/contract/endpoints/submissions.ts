import { z } from 'zod';
import { pageCursor, pageLimit } from '../page-query.js';
import { problemSchema } from '../problem.js';
import { SUBMISSION_STATES } from '../submission-states.js';

const decimal = z.string().describe('A decimal number as text');
const nextCursor = z.string().nullable().describe('Cursor of the next page; null on the last');
const entered = z
  .strictObject({ text: z.string().describe('As typed'), unit: z.string().describe('Unit as entered') })
  .describe('As entered');

const specimen = z.strictObject({
  number: z.int().describe('Number within the submission'),
  condition: z.string().describe('untreated or treated'),
  state: z.enum(['valid', 'invalid', 'setAside']).describe('Only valid specimens count'),
  reason: z.string().nullable().describe('Why it does not count'),
  readings: z
    .array(
      z.strictObject({
        role: z.string().describe('What was read'),
        station: z.int().nullable().describe('Station along the specimen'),
        entered,
        value: decimal.describe('Exact, in SI'),
        unit: z.string().describe('SI unit'),
      }),
    )
    .describe('Readings'),
});

const finding = z.strictObject({
  id: z.uuid().nullable().describe('Id, for the answer of the reviewer; null in a preview'),
  code: z.string().describe('Code of the check'),
  severity: z.enum(['blocks', 'held', 'note']).describe('blocks the submission, is held for the reviewer, or is a note'),
  message: z.string().describe('What was found; a tester reads what is safe to know'),
  detail: z.record(z.string(), z.unknown()).nullable().describe('Numbers seen and limit used; null for a tester'),
  resolution: z.string().nullable().describe('What the reviewer wrote about it'),
});

const review = z.strictObject({
  revision: z.int().describe('Revision it decided on'),
  decision: z.enum(['accepted', 'returned', 'refused']).describe('Decision'),
  reason: z.string().nullable().describe('Reason'),
  at: z.iso.datetime().describe('When'),
  reviewer: z.string().describe('Who decided'),
});

const query = z.strictObject({
  id: z.uuid().describe('Id of the query'),
  revision: z.int().describe('Revision it was asked on'),
  specimens: z.array(z.int()).describe('Specimens to look at'),
  question: z.string().describe('The question'),
  askedAt: z.iso.datetime().describe('When it was asked'),
  answer: z.string().nullable().describe('The answer; null while open'),
});

const heading = {
  reference: z.string().describe('Reference, e.g. S-2026-0007'),
  edition: z.string().describe('Slug of the edition'),
  spool: z.string().describe('Blind code'),
  method: z.strictObject({ slug: z.string().describe('Method'), number: z.int().describe('Version') }).describe('Method version'),
  benchDay: z.iso.date().describe('Day at the bench, local'),
  state: z.enum(SUBMISSION_STATES).describe('draft, submitted, accepted, returned, refused, takenBack or withdrawn'),
  revision: z.int().describe('Revision handed in last; 0 for a draft'),
  tester: z.string().describe('Who handed it in'),
  handedInAt: z.iso.datetime().nullable().describe('When the last revision was handed in; null for a draft'),
};

export const submissionSummary = z.strictObject({ ...heading, version: z.int().describe('Number in the ETag') });

export const figuresAnswer = z
  .record(z.string(), z.unknown())
  .describe('Figures of the submission (SubmissionFigures), numbers with their units in the names');

export const submissionResponse = z.strictObject({
  ...heading,
  version: z.int().describe('Number in the ETag'),
  zone: z.string().nullable().describe('Time zone of the bench; null for a draft'),
  temperature: entered.nullable(),
  temperatureC: decimal.nullable().describe('Ambient temperature [°C]'),
  humidityPercent: decimal.nullable().describe('Relative humidity [%]'),
  hasSeenLabel: z.boolean().nullable().describe('Whether the tester has seen the unblinded label'),
  isBlind: z
    .boolean()
    .nullable()
    .describe('False where its tester has seen the label or had read what tells of the spool; null for a draft'),
  note: z.string().nullable().describe('Note of the tester'),
  fewerBecause: z.string().nullable().describe('Why fewer specimens count than the method asks for'),
  instruments: z
    .array(
      z.strictObject({
        code: z.string().describe('Bench code'),
        kind: z.string().describe('Kind'),
        certificate: z.string().nullable().describe('Certificate valid on the bench day'),
      }),
    )
    .describe('Instruments used'),
  specimens: z.array(specimen).describe('Every specimen, counted or not'),
  figures: figuresAnswer.nullable(),
  findings: z.array(finding).describe('What the checks found'),
  reviews: z.array(review).describe('Decisions, oldest first'),
  queries: z.array(query).describe('Questions, oldest first'),
  withdrawal: z
    .strictObject({ reason: z.string().describe('Why'), at: z.iso.datetime().describe('When') })
    .nullable()
    .describe('Withdrawal'),
  draft: z.record(z.string(), z.unknown()).nullable().describe('A draft as typed'),
});

export const submissionPreview = z.strictObject({
  edition: heading.edition,
  spool: heading.spool,
  method: heading.method,
  benchDay: heading.benchDay,
  rows: z
    .strictObject({ first: z.int().describe('First line'), last: z.int().describe('Last line') })
    .nullable()
    .describe('Lines of the file; null where there is none'),
  isBlocked: z.boolean().describe('Whether a check blocks it'),
  figures: figuresAnswer,
  findings: z.array(finding).describe('What the checks found'),
});
export const previewAnswer = z.union([
  submissionPreview,
  z.strictObject({ submissions: z.array(submissionPreview).describe('In the order of the file') }),
]);

const handedInSummary = submissionSummary.extend({ findings: z.array(finding).describe('What the checks found, in words for its tester') });
const fault = problemSchema.shape.errors.element;
export const handedInAnswer = z.union([
  submissionResponse,
  z.strictObject({
    submissions: z.array(handedInSummary).describe('Stored ones, in the order of the file'),
    refused: z.array(fault).describe('Faults of those that were not stored; none unless partial was asked for'),
    refusedFaults: z.int().describe('How many such faults there are; of very many, the first are listed'),
  }),
]);
export const handInQuery = z.strictObject({
  partial: z.stringbool().default(false).describe('Whether the good submissions of a file are stored without the others'),
});

/** Body of hand-in and preview, for the description: it is read from the request itself, as it may be a stream. */
export const handInBody = {
  description: 'One submission as JSON, or CSV with a header row: as text/csv, or as the one file of a form.',
  schema: { type: 'object' },
};

export const csvColumnsResponse = z.strictObject({
  items: z.array(
    z.strictObject({
      name: z.string().describe('Name in the header; a column with a reading takes its unit in brackets, or in a column "<name> unit"'),
      isRequired: z.boolean(),
      meaning: z.string(),
      example: z.string(),
      carriesReading: z.boolean().describe('Needs a unit'),
    }),
  ),
  nextCursor: z.string().nullable(),
});

export const submissionsQuery = z.strictObject({
  state: z.enum(SUBMISSION_STATES).optional().describe('Only these'),
  edition: z.string().max(60).optional().describe('Only of this edition'),
  inDoubt: z.literal('true').optional().describe('Only accepted ones with a held finding that nobody has answered'),
  limit: pageLimit(),
  cursor: pageCursor,
});
export const submissionsResponse = z.strictObject({ items: z.array(submissionSummary).describe('Newest first'), nextCursor });

export type SubmissionResponse = z.infer<typeof submissionResponse>;
export type SubmissionSummary = z.infer<typeof submissionSummary>;
export type HandedInSummary = z.infer<typeof handedInSummary>;
export type SubmissionsQuery = z.infer<typeof submissionsQuery>;
export type PreviewResponse = z.infer<typeof submissionPreview>;
