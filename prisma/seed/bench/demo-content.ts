import type { z } from 'zod';
import type { submissionContent } from '../../../api/contract/submission-content.js';

/** What a demo tester hands in, before the spool has its blind code. */
export type DemoContent = Omit<z.input<typeof submissionContent>, 'spool'>;
export type DemoSpecimen = DemoContent['specimens'][number];
