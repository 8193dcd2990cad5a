import type { PublishedSubmission, VariantDocument } from '../../contract/documents/release-documents.js';
import { integer, number, OF_SUBMISSION, OF_VARIANT, optional, SUBMISSION, text, VARIANT } from './table.js';
import type { Table } from './table.js';

const SPECIMEN = integer('specimen', 'Number of the specimen in its submission');

/** The evidence: submissions, their specimens, and every reading as entered. */
export function evidenceTables(variants: readonly VariantDocument[]): Table[] {
  const submissions = variants.flatMap(({ submissions: own }) => own);
  return [submissionsTable(variants), specimensTable(submissions), readingsTable(submissions)];
}

const submissionsTable = (variants: readonly VariantDocument[]): Table => ({
  name: 'submissions',
  title: 'Accepted submissions',
  columns: [
    SUBMISSION,
    VARIANT,
    text('method', 'Method'),
    integer('version', 'Version of the method'),
    text('tester', 'Display name of the tester'),
    text('reviewer', 'Display name of the second person'),
    text('rig', 'Instrument that took the readings'),
    { name: 'bench day', type: 'date', description: 'Local date at the bench' },
    text('spool', 'Blind code of the spool'),
    text('blind', 'yes; no where its tester had seen the label or read what tells of the spool'),
  ],
  primaryKey: ['submission'],
  foreignKeys: [OF_VARIANT],
  rows: variants.flatMap(({ variant, submissions }) =>
    submissions.map(({ reference, method, methodVersion, tester, reviewer, rig, benchDay, spool, isBlind }) => ({
      submission: reference,
      variant: variant.slug,
      method,
      version: methodVersion,
      tester,
      reviewer,
      rig,
      'bench day': benchDay,
      spool,
      blind: isBlind === false ? 'no' : 'yes',
    })),
  ),
});

const specimensTable = (submissions: readonly PublishedSubmission[]): Table => ({
  name: 'specimens',
  title: 'Specimens, counted or not',
  columns: [
    SUBMISSION,
    SPECIMEN,
    text('condition', 'Untreated, or treated: knotted or abraded'),
    text('state', 'Valid, invalid or set aside; only valid ones count'),
    optional(text('reason', 'Why it does not count')),
  ],
  primaryKey: ['submission', 'specimen'],
  foreignKeys: [OF_SUBMISSION],
  rows: submissions.flatMap(({ reference, specimens }) =>
    specimens.map(({ number: specimen, condition, state, reason }) => ({ submission: reference, specimen, condition, state, reason })),
  ),
});

const readingsTable = (submissions: readonly PublishedSubmission[]): Table => ({
  name: 'readings',
  title: 'Every reading, as entered and in SI',
  columns: [
    SUBMISSION,
    SPECIMEN,
    integer('reading', 'Running number of the reading in its specimen'),
    text('role', 'What was read'),
    optional(integer('station', 'Place along the specimen')),
    text('entered', 'Number as entered'),
    text('entered unit', 'Unit as entered'),
    number('value', 'The same in SI'),
    text('unit', 'SI unit'),
  ],
  primaryKey: ['submission', 'specimen', 'reading'],
  foreignKeys: [OF_SUBMISSION, { columns: ['submission', 'specimen'], table: 'specimens', references: ['submission', 'specimen'] }],
  rows: submissions.flatMap(({ reference, specimens }) =>
    specimens.flatMap((specimen) =>
      specimen.readings.map(({ role, station, entered, value, unit }, index) => ({
        submission: reference,
        specimen: specimen.number,
        reading: index + 1,
        role,
        station,
        entered: entered.text,
        'entered unit': entered.unit,
        value,
        unit,
      })),
    ),
  ),
});
