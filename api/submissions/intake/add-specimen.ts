import { MOST_READINGS, MOST_SPECIMENS } from '../../contract/submission-content.js';
import { CSV_COLUMNS } from './csv-columns.js';
import type { FileRow } from './file-row.js';
import type { SpecimenOfRows, RowsTogether } from './rows-together.js';
import type { RowFault } from './row-fault.js';

const QUANTITIES = CSV_COLUMNS.flatMap(({ name, role }) => (role === undefined ? [] : [{ name, role }]));

/** Adds a row to its specimen; a specimen may take several rows, one a station, that agree on all but the readings. */
export function addSpecimen(submission: RowsTogether, row: FileRow): RowFault[] {
  const number = row.wholeNumber('specimen');
  const hasStation = row.text('station') !== '';
  const station = row.wholeNumber('station');
  const faults = [
    ...(number === null ? [notWhole(row, 'specimen')] : []),
    ...(hasStation && station === null ? [notWhole(row, 'station')] : []),
  ];
  if (number === null) return faults;
  const made = specimenOf(number, row);
  const index = submission.indexOf.get(number);
  const known = index === undefined ? undefined : submission.content.specimens[index];
  const place = index === undefined ? undefined : submission.places[index];
  if (known && place) {
    faults.push(...differences(known, place.row, made, row));
    addReadings(known, place.readings, row, station);
  } else if (submission.content.specimens.length <= MOST_SPECIMENS) {
    // One more than allowed is kept, so that the validation tells it.
    const begun = { row, readings: [] };
    submission.indexOf.set(number, submission.content.specimens.push(made) - 1);
    submission.places.push(begun);
    addReadings(made, begun.readings, row, station);
  }
  return faults;
}

function specimenOf(number: number, row: FileRow): SpecimenOfRows {
  const reason = row.text('invalid reason');
  const condition = row.text('condition') || 'untreated';
  return { number, condition, validity: reason ? 'invalid' : 'valid', ...(reason ? { invalidReason: reason } : {}), readings: [] };
}

function addReadings(
  specimen: SpecimenOfRows,
  places: RowsTogether['places'][number]['readings'],
  row: FileRow,
  station: number | null,
): void {
  for (const { name, role } of QUANTITIES) {
    // As of specimens, one more than allowed is kept.
    if (row.text(name) === '' || specimen.readings.length > MOST_READINGS) continue;
    specimen.readings.push({ role, station: role.endsWith('Diameter') ? station : null, value: row.decimal(name), unit: row.unitOf(name) });
    places.push({ row, name });
  }
}

function differences(known: SpecimenOfRows, first: FileRow, made: SpecimenOfRows, row: FileRow): RowFault[] {
  const pairs = [
    ['condition', known.condition, made.condition],
    ['invalid reason', known.invalidReason ?? '', made.invalidReason ?? ''],
  ] as const;
  return pairs
    .filter(([, before, now]) => before !== now)
    .map(([name, before, now]) => ({
      code: 'row_differs',
      row: row.row,
      column: row.columnOf(name),
      found: now,
      expected: before,
      message: `Differs from row ${first.row} of the same specimen ${made.number}. Make them equal, or give each specimen its own number.`,
    }));
}

const notWhole = (row: FileRow, name: string): RowFault => ({
  code: 'row_not_valid',
  row: row.row,
  column: row.columnOf(name),
  found: row.text(name),
  expected: 'a whole number above zero',
  message: `Found "${row.text(name)}", expected a whole number above zero. Correct the cell.`,
});
