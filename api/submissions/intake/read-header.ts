import { MeasurementError } from '../../measurement/errors.js';
import { findUnit } from '../../measurement/units/find-unit.js';
import { unitMeant } from '../../measurement/units/unit-meant.js';
import { UNITS } from '../../measurement/units/unit-table.js';
import { CSV_COLUMNS } from './csv-columns.js';
import type { RowFault } from './row-fault.js';

/** Where a column stands in the file, and the unit in its header. */
export interface HeaderField {
  readonly index: number;
  readonly unit: string | null;
  /** Text of the header cell, as people know the column. */
  readonly title: string;
}

export interface Header {
  readonly fields: ReadonlyMap<string, HeaderField>;
  /** Column of a quantity → its column "<name> unit". */
  readonly unitFields: ReadonlyMap<string, HeaderField>;
  readonly width: number;
}

const NAMES = CSV_COLUMNS.map(({ name }) => name);
const WITH_UNIT = CSV_COLUMNS.filter(({ role, name }) => role !== undefined || name === 'temperature').map(({ name }) => name);

/** Understands the header row: names in any order and case, units in square brackets or in a column "<name> unit". */
export function readHeader(row: number, cells: readonly string[]): { header: Header; faults: RowFault[] } {
  const fields = new Map<string, HeaderField>();
  const unitFields = new Map<string, HeaderField>();
  const faults: RowFault[] = [];
  cells.forEach((cell, index) => {
    const title = cell.trim();
    const { name, unit } = partsOf(title);
    const quantity = WITH_UNIT.find((candidate) => name === `${candidate} unit`);
    const [target, key] = quantity === undefined ? [fields, name] : [unitFields, quantity];
    const problem = problemOf(row, title, key, unit, target.has(key));
    if (problem) faults.push(problem);
    else target.set(key, { index, unit, title });
  });
  const header = { fields, unitFields, width: cells.length };
  return { header, faults: [...faults, ...missingColumns(row, header, faults), ...unitFaults(row, header)] };
}

/** "Force [lbf]" is a name and a unit; looked for from its end, so that a title of any length takes no longer than reading it. */
function partsOf(title: string): { name: string; unit: string | null } {
  const at = title.endsWith(']') ? title.lastIndexOf('[') : -1;
  const name = (at === -1 ? title : title.slice(0, at)).trimEnd().toLowerCase();
  return { name, unit: at === -1 ? null : title.slice(at + 1, -1) };
}

function problemOf(row: number, title: string, name: string, unit: string | null, isTwice: boolean): RowFault | null {
  if (!NAMES.includes(name)) {
    const message = `"${title}" is not a column here. Remove it or correct its name.`;
    return { code: 'column_unknown', row, column: title, found: title, expected: NAMES.join(', '), message };
  }
  if (isTwice) {
    const message = `The column "${title}" is there twice. Remove one.`;
    return { code: 'column_twice', row, column: title, found: title, expected: 'each column once', message };
  }
  if (unit === null || (name === 'humidity' && unit === '%')) return null;
  if (!WITH_UNIT.includes(name)) {
    const message = `The column "${name}" has no unit. Remove [${unit}].`;
    return { code: 'unit_unknown', row, column: title, found: unit, expected: name, message };
  }
  if (isKnown(unit)) return null;
  const message = `"${unit}" is not a known unit. Write one of those known.${unitMeant(unit)}`;
  return { code: 'unit_unknown', row, column: title, found: unit, expected: Object.keys(UNITS).join(', '), message };
}

function isKnown(unit: string): boolean {
  try {
    findUnit(unit);
    return true;
  } catch (error) {
    if (error instanceof MeasurementError) return false;
    throw error;
  }
}

/** Required columns that are not there; one whose name was understood but whose unit was not is told once, as that. */
function missingColumns(row: number, { fields }: Header, faults: readonly RowFault[]): RowFault[] {
  return CSV_COLUMNS.filter(({ name, isRequired }) => isRequired && !fields.has(name))
    .filter(({ name }) => !faults.some(({ code, column }) => code === 'unit_unknown' && column.toLowerCase().startsWith(name)))
    .map(({ name }) => {
      const message = `The column "${name}" is missing. Add it.`;
      return { code: 'column_missing', row, column: name, found: 'no such column', expected: name, message };
    });
}

/** A quantity says its unit in exactly one place. */
function unitFaults(row: number, { fields, unitFields }: Header): RowFault[] {
  return WITH_UNIT.flatMap((name): RowFault[] => {
    const [field, unitField] = [fields.get(name), unitFields.get(name)];
    const expected = `${name} [unit], or a column "${name} unit"`;
    if (field && field.unit === null && !unitField) {
      const message = `The column "${name}" has no unit. Nothing is guessed: write it in brackets, or add a column "${name} unit".`;
      return [{ code: 'unit_missing', row, column: field.title, found: field.title, expected, message }];
    }
    if (unitField && field?.unit !== null) {
      const message = `The column "${unitField.title}" stands beside ${field ? `"${field.title}"` : `no column "${name}"`}. A unit stands in one of the two places.`;
      return [{ code: 'column_twice', row, column: unitField.title, found: unitField.title, expected, message }];
    }
    return [];
  });
}
