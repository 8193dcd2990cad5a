import { FaultList } from '../../api/submissions/intake/fault-list.js';
import { parseSubmissionsCsv } from '../../api/submissions/intake/parse-submissions-csv.js';
import type { HandIn } from '../../api/submissions/intake/intake.js';
import { SpooledFile } from '../../api/submissions/intake/spooled-file.js';

/** Reads a hand-in file to its end, as the program does: from disk. */
export async function readWholeFile(bytes: AsyncIterable<Uint8Array>) {
  const file = await SpooledFile.of(bytes);
  const list = new FaultList();
  try {
    const submissions: HandIn[] = [];
    for await (const submission of parseSubmissionsCsv(file.read(), list)) submissions.push(submission);
    return { submissions, faults: list.faults, furtherFaults: list.furtherFaults, isSound: list.isSound };
  } finally {
    await file.close();
  }
}
