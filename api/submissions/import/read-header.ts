import { UNITS } from '../../measurement/units/unit-table.js';
import { CSV_COLUMNS } from './csv-columns.js';
import { rowFault } from './row-fault.js';
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
  /** Reading column → index of its unit column. */
  readonly unitFields: ReadonlyMap<string, number>;
  readonly width: number;
}

const NAMES = CSV_COLUMNS.map(({ name }) => name);
const WITH_UNIT = CSV_COLUMNS.filter(({ name, role }) => role !== undefined || name === 'temperature').map(({ name }) => name);

/** Understands the header row: names in any order and case, units in square brackets or in a column "<name> unit". */
export function readHeader(cells: readonly string[]): { header: Header; faults: RowFault[] } {
  const fields = new Map<string, HeaderField>();
  const unitFields = new Map<string, number>();
  const faults: RowFault[] = [];
  cells.forEach((cell, index) => {
    const title = cell.trim();
    const [, rawName = '', unit] = /^(.*?)\s*(?:\[([^\]]*)\])?$/.exec(title) ?? [];
    const name = rawName.toLowerCase();
    const unitOf = name.endsWith(' unit') ? name.slice(0, -' unit'.length) : null;
    if (unitOf !== null && WITH_UNIT.includes(unitOf)) unitFields.set(unitOf, index);
    else if (!NAMES.includes(name))
      faults.push(rowFault(1, title, title, NAMES.join(', '), `"${title}" is not a column here. Remove it or correct its name.`));
    else if (fields.has(name))
      faults.push(rowFault(1, title, title, 'each column once', `The column "${name}" is there twice. Remove one.`));
    else if (unit !== undefined && name !== 'humidity' && !(unit in UNITS))
      faults.push(rowFault(1, title, unit, Object.keys(UNITS).join(', '), `"${unit}" is not a known unit.`));
    else fields.set(name, { index, unit: unit ?? null, title });
  });
  for (const { name, isRequired } of CSV_COLUMNS) {
    if (isRequired && !fields.has(name)) faults.push(rowFault(1, name, 'no such column', name, `The column "${name}" is missing. Add it.`));
  }
  for (const [name, { unit, title }] of fields) {
    if (WITH_UNIT.includes(name) && unit === null && !unitFields.has(name)) {
      faults.push(
        rowFault(
          1,
          title,
          title,
          `${name} [unit], or a column "${name} unit"`,
          `The column "${name}" has no unit. Nothing is guessed: write it in brackets, or add a column "${name} unit".`,
        ),
      );
    }
  }
  return { header: { fields, unitFields, width: cells.length }, faults };
}
