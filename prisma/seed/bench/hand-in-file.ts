import { CSV_COLUMNS } from '../../../api/submissions/intake/csv-columns.js';
import type { CsvColumn } from '../../../api/submissions/intake/csv-columns.js';
import type { DemoContent, DemoSpecimen } from './demo-content.js';

/** A submission that goes into the file. */
export interface FiledSubmission {
  readonly blindCode: string;
  readonly content: DemoContent;
}

type Reading = DemoSpecimen['readings'][number];

/**
 * The file that a tester hands in after a bench day: one row a specimen, or a station of it.
 * Columns without content are left out; the unit of a reading stands in its header.
 * @throws Error when the same column would need two units; hand in two files instead
 */
export function handInFile(submissions: readonly FiledSubmission[]): string {
  const rows = submissions.flatMap(({ blindCode, content }, index) => rowsOf(String(index + 1), blindCode, content));
  const used = CSV_COLUMNS.filter(({ name }) => rows.some((row) => row.cells.get(name) !== undefined));
  const header = used.map((column) => titleOf(column, rows));
  return (
    [header, ...rows.map((row) => used.map(({ name }) => row.cells.get(name) ?? ''))]
      .map((cells) => cells.map(quoted).join(','))
      .join('\r\n') + '\r\n'
  );
}

interface Row {
  readonly cells: ReadonlyMap<string, string>;
  /** Column → unit of what stands in it. */
  readonly units: ReadonlyMap<string, string>;
}

function rowsOf(mark: string, blindCode: string, content: DemoContent): Row[] {
  const { temperature, humidityPercent } = content.ambient;
  const shared: [string, string | undefined][] = [
    ['submission', mark],
    ['edition', content.edition],
    ['spool', blindCode],
    ['method', content.method],
    ['method version', String(content.methodVersion)],
    ['bench day', content.benchDay],
    ['zone', content.zone],
    ['instruments', content.instruments.join(' ')],
    ['temperature', temperature.value],
    ['humidity', humidityPercent],
    ['seen label', content.seenLabel === true ? 'yes' : undefined],
    ['note', content.note],
  ];
  return content.specimens.flatMap((specimen) =>
    specimenRows(specimen).map((readings) => toRow(shared, specimen, readings, temperature.unit)),
  );
}

/** Readings of one row: all of a pull, or the two of a station. */
function specimenRows({ readings }: DemoSpecimen): Reading[][] {
  return [...Map.groupBy(readings, ({ station }) => station ?? null).values()];
}

function toRow(
  shared: readonly [string, string | undefined][],
  specimen: DemoSpecimen,
  readings: readonly Reading[],
  temperatureUnit: string,
): Row {
  const station = readings[0]?.station;
  const cells = new Map<string, string>();
  const units = new Map([['temperature', temperatureUnit]]);
  const put = ([name, text]: readonly [string, string | undefined]) => {
    if (text !== undefined) cells.set(name, text);
  };
  shared.forEach(put);
  put(['specimen', String(specimen.number)]);
  put(['condition', specimen.condition]);
  put(['invalid reason', specimen.invalidReason]);
  put(['station', station === undefined || station === null ? undefined : String(station)]);
  for (const { role, value, unit } of readings) {
    const column = CSV_COLUMNS.find((one) => one.role === role);
    if (!column) throw new Error(`No column carries a reading of ${role}; add one to the table of columns.`);
    put([column.name, value]);
    units.set(column.name, unit);
  }
  return { cells, units };
}

function titleOf({ name }: CsvColumn, rows: readonly Row[]): string {
  const units = [...new Set(rows.flatMap(({ units }) => units.get(name) ?? []))];
  if (units.length > 1) throw new Error(`The column ${name} would hold ${units.join(' and ')}; hand these in as two files.`);
  return units[0] === undefined ? name : `${name} [${units[0]}]`;
}

/** RFC 4180. */
const quoted = (text: string): string => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
