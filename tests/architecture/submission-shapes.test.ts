import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { shapesOf } from './submission-shapes.js';

/** As parsed, as read, as examined, as recorded. */
const FOUR = ['ExaminedSubmission', 'HandIn', 'ReadSubmission', 'SubmissionRecord'];

test('a submission has four shapes on its way to the record', () => {
  expect(shapesOf('api/submissions')).toEqual(FOUR);
});

test('what the parser holds is a shape once another room takes it', () => {
  const folder = mkdtempSync(join(tmpdir(), 'fairpull-shapes-'));
  try {
    cpSync('api/submissions', folder, { recursive: true });
    writeFileSync(join(folder, 'hand-in/takes-rows.ts'), "import type { RowsTogether } from '../intake/rows-together.js';\n");
    expect(shapesOf(folder)).toEqual([...FOUR, 'RowsTogether'].sort());
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test.each([
  ['an interface with what was handed in', 'export interface Fifth { readonly content: object }'],
  [
    'one that builds on a shape',
    "import type { HandIn } from '../intake/intake.js';\nexport interface Fifth extends HandIn { readonly at: Date }",
  ],
  [
    'a shape and more',
    "import type { SubmissionRecord } from './examined-submission.js';\nexport type Fifth = SubmissionRecord & { readonly id: string };",
  ],
  [
    'a part of a shape',
    "import type { ReadSubmission } from './examined-submission.js';\nexport type Fifth = Omit<ReadSubmission, 'rows'>;",
  ],
  ['what a function makes', 'const toFifth = () => ({ specimens: [] });\nexport type Fifth = ReturnType<typeof toFifth>;'],
])('a fifth is seen: %s', (_what, text) => {
  const folder = mkdtempSync(join(tmpdir(), 'fairpull-shapes-'));
  try {
    cpSync('api/submissions', folder, { recursive: true });
    writeFileSync(join(folder, 'examine/fifth.ts'), text);
    expect(shapesOf(folder)).toEqual([...FOUR, 'Fifth'].sort());
  } finally {
    rmSync(folder, { recursive: true });
  }
});
