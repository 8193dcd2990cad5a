import type { FileRow } from './file-row.js';

export interface ReadingOfRows {
  readonly role: string;
  readonly station: number | null;
  readonly value: string;
  readonly unit: string;
}

export interface SpecimenOfRows {
  readonly number: number;
  readonly condition: string;
  readonly validity: string;
  readonly invalidReason?: string;
  readonly readings: ReadingOfRows[];
}

/** Where a reading stood in the file. */
export interface ReadingPlace {
  readonly row: FileRow;
  readonly name: string;
}

/** Rows of a file that belong together, with the place of each part: what the parser holds until it has made a submission of them or told what is wrong. */
export interface RowsTogether {
  readonly content: Record<string, unknown> & { specimens: SpecimenOfRows[] };
  readonly first: FileRow;
  lastRow: number;
  /** Number of a specimen → its index. */
  readonly indexOf: Map<number, number>;
  /** By index: the first row of each specimen, and the place of each of its readings. */
  readonly places: { row: FileRow; readings: ReadingPlace[] }[];
  /** Whether a fault was found in one of its rows. */
  isFaulty: boolean;
}

const FIELDS: Readonly<Record<string, string>> = {
  methodVersion: 'method version',
  benchDay: 'bench day',
  seenLabel: 'seen label',
  fewerBecause: 'fewer because',
  number: 'specimen',
  invalidReason: 'invalid reason',
  validity: 'invalid reason',
  readings: 'specimen',
};

/**
 * Leads from a place in the content back to the file.
 * @param path parts of an RFC 6901 pointer, or of the path of a validation issue
 */
export function placeOf({ first, places }: RowsTogether, path: readonly PropertyKey[]): { row: number; column: string } {
  const [field = '', index, part, readingIndex, inReading] = path.map(String);
  if (field === '') return { row: first.row, column: '' };
  if (field === 'ambient') {
    if (index === 'humidityPercent') return { row: first.row, column: first.columnOf('humidity') };
    return { row: first.row, column: part === 'unit' ? first.unitColumnOf('temperature') : first.columnOf('temperature') };
  }
  const place = index === undefined ? undefined : places[Number(index)];
  if (field !== 'specimens' || !place)
    return { row: first.row, column: field === 'specimens' ? '' : first.columnOf(FIELDS[field] ?? field) };
  const reading = part === 'readings' && readingIndex !== undefined ? place.readings[Number(readingIndex)] : undefined;
  if (!reading) return { row: place.row.row, column: place.row.columnOf(FIELDS[part ?? 'number'] ?? part ?? '') };
  const { row, name } = reading;
  const column = inReading === 'unit' ? row.unitColumnOf(name) : inReading === 'station' ? row.columnOf('station') : row.columnOf(name);
  return { row: row.row, column };
}
