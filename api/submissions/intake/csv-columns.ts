/** The columns of a hand-in file: parser, documentation and sample are made from this table. Pure. */
import { INVALID_REASONS } from '../../contract/submission-content.js';
import type { ReadingRole } from '../../contract/submission-content.js';

export interface CsvColumn {
  readonly name: string;
  readonly isRequired: boolean;
  readonly meaning: string;
  readonly example: string;
  /** Set on the columns that carry a reading; its unit stands in the header or in a column "<name> unit". */
  readonly role?: ReadingRole;
}

const column = (name: string, isRequired: boolean, meaning: string, example: string, role?: ReadingRole): CsvColumn => ({
  name,
  isRequired,
  meaning,
  example,
  ...(role ? { role } : {}),
});

export const CSV_COLUMNS: readonly CsvColumn[] = [
  column('submission', false, 'Any mark that tells submissions of the same spool, method and day apart', 'a'),
  column('edition', true, 'Slug of the edition', '2026'),
  column('spool', true, 'Blind code of the spool', 'K7M2QX4'),
  column('method', true, 'Slug of the method', 'straight-pull'),
  column('method version', true, 'Number of the version', '1'),
  column('bench day', true, 'Local date at the bench', '2026-01-17'),
  column('zone', false, 'Time zone of the bench, IANA name; UTC when left out', 'Europe/Lisbon'),
  column('instruments', true, 'Codes of the instruments used, separated by spaces', 'R1 BAL1'),
  column('temperature', true, 'Ambient temperature, in °C or °F', '20.5'),
  column('humidity', true, 'Relative humidity in %', '63'),
  column('seen label', false, 'yes when the tester has seen the unblinded label', 'no'),
  column('note', false, 'Words for the reviewer', ''),
  column('fewer because', false, 'Why fewer specimens count than the method asks for, in words', ''),
  column('specimen', true, 'Number of the specimen within the submission', '1'),
  column('condition', false, 'untreated, or treated when knotted or abraded', 'untreated'),
  column('invalid reason', false, `Why the specimen does not count: ${INVALID_REASONS.join(', ')}`, ''),
  column('station', false, 'Station along the specimen, for diameters', '1'),
  column('force', false, 'Peak force', '36.52', 'breakingForce'),
  column('time to break', false, 'Time from first load to break', '18.2', 'timeToBreak'),
  column('wide diameter', false, 'Widest reading at the station', '0.262', 'wideDiameter'),
  column('narrow diameter', false, 'Narrowest reading at the station', '0.250', 'narrowDiameter'),
  column('mass', false, 'Mass of the measured length', '0.2217', 'mass'),
  column('length', false, 'Length that was weighed', '10', 'length'),
];

/** The columns as they are published. */
export const csvColumnsAnswer = () => ({
  items: CSV_COLUMNS.map(({ role, ...published }) => ({ ...published, carriesReading: role !== undefined })),
  nextCursor: null,
});
