import type { RecordsDocument } from '../../contract/documents/release-documents.js';
import { headingOf } from '../documents/release-context.js';
import type { ReleaseContext } from '../documents/release-context.js';
import { recordsOf } from './records.js';
import { runsOf } from './runs.js';
import { seasonsOf } from './seasons.js';

/** What stands over the years: records and runs at the top, as known when this edition was published. */
export function recordsDocument(context: ReleaseContext): RecordsDocument {
  const seasons = seasonsOf(context);
  return { ...headingOf(context), records: recordsOf(context, seasons), runs: runsOf(seasons) };
}
