import { MeasurementError } from '../../measurement/errors.js';
import { findUnit } from '../../measurement/units/find-unit.js';
import { UNITS } from '../../measurement/units/unit-table.js';
import type { Dimension } from '../../measurement/units/unit-table.js';
import type { FaultList } from '../intake/fault-list.js';
import type { RowFault } from '../intake/row-fault.js';
import type { Over } from '../../readings/traces/trace-figures.js';

/** A row with its line in the file. */
export interface TraceRow {
  readonly row: number;
  readonly cells: readonly string[];
}

interface TraceColumn {
  readonly name: string;
  /** What a number of it is multiplied by to give newtons, millimetres or seconds; 1 for a specimen. */
  readonly factor: number;
  readonly dimension: Dimension | null;
}

/** The columns of a trace file: places of force, of what it is over, and of the specimen. */
export interface TraceHeader {
  readonly columns: readonly TraceColumn[];
  readonly force: number;
  readonly x: number;
  readonly specimen: number | null;
  readonly over: Over;
}

const SPECIMEN = /^(specimen|sample|probe|no\.?|nr\.?|#)\b/i;
/** Lines of the header that stand over the columns: names, and units below them. */
const NAMING_LINES = 2;

/**
 * Reads the lines above the numbers. Units stand behind the names, in brackets or not, or in a line of their own.
 * @returns null when there are faults, which are then on the list
 */
export function readTraceHeader(above: readonly TraceRow[], width: number, list: FaultList): TraceHeader | null {
  const naming = above.filter(({ cells }) => cells.length >= width).slice(-NAMING_LINES);
  const columns = Array.from({ length: width }, (_, index) =>
    columnOf(
      naming.map(({ cells }) => cells[index] ?? ''),
      index,
    ),
  );
  const row = naming[0]?.row ?? above.at(-1)?.row ?? 1;
  const specimen = columns.findIndex(({ name, dimension }) => dimension === null && SPECIMEN.test(name));
  list.add(...unitFaults(columns, specimen, row));
  const of = (dimension: Dimension) => columns.flatMap((column, index) => (column.dimension === dimension ? [index] : []));
  const [force, extension, time] = [of('force'), of('length'), of('time')];
  list.add(
    ...countFault(force, 'force', true, row),
    ...countFault(extension, 'extension', false, row),
    ...countFault(time, 'time', extension.length === 0, row),
  );
  const x = extension[0] ?? time[0];
  if (list.faults.length > 0 || force[0] === undefined || x === undefined) return null;
  return { columns, force: force[0], x, specimen: specimen === -1 ? null : specimen, over: extension.length > 0 ? 'extension' : 'time' };
}

function unitFaults(columns: readonly TraceColumn[], specimen: number, row: number): RowFault[] {
  return columns.flatMap(({ name, dimension }, index) => {
    if (dimension !== null || index === specimen) return [];
    const message = `Column "${name}" names no known unit of force, length or time. Write it as e.g. "${name} (N)".`;
    return [headerFault('unit_missing', row, name, name, 'a unit such as N, mm or s', message)];
  });
}

function countFault(found: readonly number[], what: string, isNeeded: boolean, row: number): RowFault[] {
  if (found.length === 1 || (found.length === 0 && !isNeeded)) return [];
  const message = `Found ${found.length} columns of ${what}, expected one. Export the ${what} once, with its unit.`;
  return [headerFault(found.length === 0 ? 'column_missing' : 'column_twice', row, what, `${found.length} columns`, 'one column', message)];
}

const IN_WORKING_UNIT: Partial<Record<Dimension, number>> = { force: 1, length: 1000, time: 1 };

function columnOf(cells: readonly string[], index: number): TraceColumn {
  const words = cells.join(' ').trim();
  const unit = unitIn(words);
  const dimension = unit ? UNITS[unit].dimension : null;
  const scale = dimension && IN_WORKING_UNIT[dimension];
  const name = (cells[0] ?? '').replace(/[([{/].*$/, '').trim() || `column ${index + 1}`;
  if (!unit || !dimension || scale === undefined || scale === null) return { name, factor: 1, dimension: null };
  return { name, dimension, factor: (scale * Number(UNITS[unit].factor)) / Number(UNITS[unit].divisor) };
}

/** The last word that is a unit: "Force (N)", "Force [N]", "Force / N", "Force N". */
function unitIn(words: string): keyof typeof UNITS | null {
  const symbols = words.split(/[\s()[\]{}/,]+/).filter(Boolean);
  for (const symbol of symbols.toReversed()) {
    try {
      return findUnit(symbol);
    } catch (error) {
      if (!(error instanceof MeasurementError)) throw error;
    }
  }
  return null;
}

const headerFault = (code: RowFault['code'], row: number, column: string, found: string, expected: string, message: string): RowFault => ({
  code,
  row,
  column,
  found,
  expected,
  message,
});
