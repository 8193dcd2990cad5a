import { CSV_COLUMNS } from './csv-columns.js';
import type { Header } from './read-header.js';
import { rowFault } from './row-fault.js';
import type { RowFault } from './row-fault.js';

export interface RawReading {
  readonly role: string;
  readonly station: number | null;
  readonly value: string;
  readonly unit: string;
}

export interface RawSpecimen {
  readonly number: number;
  readonly condition: string;
  readonly validity: string;
  readonly invalidReason?: string;
  readonly readings: RawReading[];
}

/** A submission as the file has it, not yet validated, with the place of each part in the file. */
export interface RawSubmission {
  readonly content: Record<string, unknown> & { specimens: RawSpecimen[] };
  readonly shared: string;
  readonly firstRow: number;
  lastRow: number;
  /** Row of each specimen, and row and column of each of its readings. */
  readonly places: { row: number; readings: { row: number; column: string }[] }[];
}

const SHARED = [
  'edition',
  'spool',
  'method',
  'method version',
  'bench day',
  'zone',
  'instruments',
  'temperature',
  'temperature unit',
  'humidity',
  'seen label',
  'note',
];
const READINGS = CSV_COLUMNS.filter(({ role }) => role !== undefined);

/** Puts rows together: a submission is the rows of one mark, spool, method and bench day; a specimen may take several rows, one a station. */
export class SubmissionGatherer {
  readonly submissions = new Map<string, RawSubmission>();
  readonly faults: RowFault[] = [];

  constructor(
    private readonly header: Header,
    private readonly hasDecimalComma: boolean,
  ) {}

  add(row: number, cells: readonly string[]): void {
    if (cells.length !== this.header.width) {
      this.faults.push(
        rowFault(
          row,
          '',
          `${cells.length} cells`,
          `${this.header.width} cells`,
          'The row has another number of cells than the header. Look for a missing or extra separator.',
        ),
      );
      return;
    }
    const text = (name: string): string => cells[this.header.fields.get(name)?.index ?? -1] ?? '';
    const submission = this.submissionOf(row, text, cells);
    submission.lastRow = row;
    this.addSpecimen(submission, row, text, cells);
  }

  private submissionOf(row: number, text: (name: string) => string, cells: readonly string[]): RawSubmission {
    const key = ['submission', 'spool', 'method', 'bench day'].map(text).join('\n');
    const temperatureUnit = this.unitOf('temperature', cells);
    const shared = SHARED.map((name) => (name === 'temperature unit' ? temperatureUnit : text(name))).join('\n');
    const known = this.submissions.get(key);
    if (known) {
      if (known.shared !== shared) this.faultOfDifference(row, known, shared);
      return known;
    }
    const optional = { ...(text('zone') ? { zone: text('zone') } : {}), ...(text('note') ? { note: text('note') } : {}) };
    const content = {
      edition: text('edition'),
      spool: text('spool'),
      method: text('method'),
      methodVersion: this.wholeNumber(row, 'method version', text('method version')),
      benchDay: text('bench day'),
      ...optional,
      instruments: text('instruments')
        .split(/\s+/)
        .filter((code) => code !== ''),
      ambient: {
        temperature: { value: this.decimal(text('temperature')), unit: temperatureUnit },
        humidityPercent: this.decimal(text('humidity')),
      },
      seenLabel: /^(yes|true|1)$/i.test(text('seen label')),
      specimens: [],
    };
    const made: RawSubmission = { content, shared, firstRow: row, lastRow: row, places: [] };
    this.submissions.set(key, made);
    return made;
  }

  private faultOfDifference(row: number, known: RawSubmission, shared: string): void {
    const [before, now] = [known.shared.split('\n'), shared.split('\n')];
    SHARED.forEach((column, i) => {
      if (before[i] === now[i]) return;
      this.faults.push(
        rowFault(
          row,
          column,
          now[i] ?? '',
          before[i] ?? '',
          `Differs from row ${known.firstRow} of the same submission. Make them equal, or mark two submissions in a column "submission".`,
        ),
      );
    });
  }

  private addSpecimen(submission: RawSubmission, row: number, text: (name: string) => string, cells: readonly string[]): void {
    const number = this.wholeNumber(row, 'specimen', text('specimen'));
    const reason = text('invalid reason');
    const condition = text('condition') || 'untreated';
    let index = submission.content.specimens.findLastIndex((specimen) => specimen.number === number);
    if (index === -1) {
      const specimen = {
        number,
        condition,
        validity: reason ? 'invalid' : 'valid',
        ...(reason ? { invalidReason: reason } : {}),
        readings: [],
      };
      index = submission.content.specimens.push(specimen) - 1;
      submission.places.push({ row, readings: [] });
    }
    const specimen = submission.content.specimens[index];
    const place = submission.places[index];
    if (!specimen || !place) return;
    if (specimen.condition !== condition)
      this.faults.push(
        rowFault(
          row,
          'condition',
          condition,
          specimen.condition,
          `Specimen ${number} is ${specimen.condition} in row ${place.row}. Give each specimen one condition, or its own number.`,
        ),
      );
    const station = text('station') === '' ? null : this.wholeNumber(row, 'station', text('station'));
    for (const { name, role = '' } of READINGS) {
      const value = text(name);
      if (value === '') continue;
      specimen.readings.push({
        role,
        station: role.endsWith('Diameter') ? station : null,
        value: this.decimal(value),
        unit: this.unitOf(name, cells),
      });
      place.readings.push({ row, column: this.header.fields.get(name)?.title ?? name });
    }
  }

  private unitOf(name: string, cells: readonly string[]): string {
    const inHeader = this.header.fields.get(name)?.unit;
    return inHeader ?? cells[this.header.unitFields.get(name) ?? -1] ?? '';
  }

  /** A decimal comma is understood only where the separator is a semicolon. */
  private decimal(text: string): string {
    return this.hasDecimalComma && /^-?\d+,\d+$/.test(text) ? text.replace(',', '.') : text;
  }

  private wholeNumber(row: number, column: string, text: string): number {
    if (/^\d{1,9}$/.test(text) && Number(text) > 0) return Number(text);
    this.faults.push(
      rowFault(row, column, text, 'a whole number above zero', `Found "${text}" where a whole number above zero should be.`),
    );
    return 1;
  }
}

/** Column that a field of the content came from. */
export function columnOfField(path: readonly PropertyKey[]): string {
  const field = String(path[0]);
  const named: Readonly<Record<string, string>> = { methodVersion: 'method version', benchDay: 'bench day', seenLabel: 'seen label' };
  if (field === 'ambient') return path[1] === 'temperature' ? 'temperature' : 'humidity';
  return named[field] ?? field;
}
