import { CsvError, parse } from 'csv-parse/sync';
import { FaultList } from '../intake/fault-list.js';
import { LONGEST_RECORD, notCsv } from '../intake/read-rows.js';
import type { RowFault } from '../intake/row-fault.js';
import { readTraceHeader } from './read-trace-header.js';
import type { TraceHeader, TraceRow } from './read-trace-header.js';
import type { Over, Sample } from '../../readings/traces/trace-figures.js';

/** Samples of one specimen; its number is null where the file has no such column. */
export interface ReadTrace {
  readonly specimen: number | null;
  readonly over: Over;
  readonly samples: readonly Sample[];
}

export interface ReadTraceFile {
  readonly traces: readonly ReadTrace[];
  readonly faults: readonly RowFault[];
  readonly furtherFaults: number;
}

/** A header is at most so deep. */
export const DEEPEST_HEADER = 20;
const MOST_SAMPLES = 500_000;
const NUMBER = /^[-+]?(\d+(\.\d*)?|\.\d+)([eE][-+]?\d+)?$/;

export const isNumber = (cell: string, decimalComma: boolean): boolean => NUMBER.test(decimalComma ? cell.replace(',', '.') : cell);

/**
 * Reads what a logger wrote: force over time, over extension, or both; with or without a column of specimens; comma, semicolon or tab;
 * a header of at most 20 lines. Every fault is told, with its row and column. Pure.
 */
export function readTraceFile(text: string): ReadTraceFile {
  const list = new FaultList();
  const separator = separatorOf(text);
  const rows = rowsOf(text, separator, list);
  if (!rows) return { traces: [], faults: list.faults, furtherFaults: list.furtherFaults };
  const decimalComma = separator !== ',';
  const first = rows.findIndex(({ cells }) => cells.length > 1 && cells.every((cell) => isNumber(cell, decimalComma)));
  if (rows.length === 0)
    list.add(fileFault('file_empty', 'nothing', 'a header and rows of numbers', 'The file is empty. Send the record of the pull.'));
  else if (first === -1)
    list.add(
      fileFault(
        'file_not_csv',
        'no row of numbers only',
        'two or three columns of numbers',
        'No row has numbers in all its cells. Export the record as plain CSV with its header.',
      ),
    );
  else if (first > DEEPEST_HEADER)
    list.add(
      fileFault(
        'file_not_csv',
        `${first} lines before the numbers`,
        `at most ${DEEPEST_HEADER}`,
        'The header is too deep. Remove the lines that say nothing of the columns.',
      ),
    );
  const header = list.faults.length === 0 ? readTraceHeader(rows.slice(0, first), rows[first]?.cells.length ?? 0, list) : null;
  const traces = header ? readSamples(rows.slice(first), header, decimalComma, list) : [];
  return { traces, faults: list.faults, furtherFaults: list.furtherFaults };
}

const SEPARATORS = ['\t', ';', ','] as const;

/** What stands in each of the lines of numbers; a tab or a semicolon before a comma, which may be a decimal comma beside them. */
function separatorOf(text: string): (typeof SEPARATORS)[number] {
  const lines = text.split(/\r\n|\n|\r/, DEEPEST_HEADER + 10).filter((line) => line.trim() !== '');
  return SEPARATORS.find((separator) => lines.slice(-5).every((line) => line.includes(separator))) ?? ',';
}

/** @returns null when it is not CSV, which is then on the list */
function rowsOf(text: string, delimiter: string, list: FaultList): TraceRow[] | null {
  try {
    return recordsOf(text, delimiter);
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    list.add(notCsv(error));
    return null;
  }
}

function recordsOf(text: string, delimiter: string): TraceRow[] {
  const records = parse(text, {
    bom: true,
    delimiter,
    record_delimiter: ['\r\n', '\n', '\r'],
    relax_column_count: true,
    relax_quotes: true,
    skip_records_with_empty_values: true,
    max_record_size: LONGEST_RECORD,
    info: true,
    trim: true,
  }) as unknown as { record: string[]; info: { lines: number } }[];
  return records.map(({ record, info }) => ({ row: info.lines, cells: record.at(-1) === '' ? record.slice(0, -1) : record }));
}

function readSamples(
  rows: readonly TraceRow[],
  { columns, force, x, specimen, over }: TraceHeader,
  decimalComma: boolean,
  list: FaultList,
): ReadTrace[] {
  const traces = new Map<number | null, Sample[]>();
  for (const { row, cells } of rows.slice(0, MOST_SAMPLES)) {
    const numbers = columns.map(({ name, factor }, index) => {
      const cell = cells[index] ?? '';
      if (isNumber(cell, decimalComma)) return factor * Number(cell.replace(',', '.'));
      list.add({
        code: 'row_not_valid',
        row,
        column: name,
        found: cell,
        expected: 'a number',
        message: `Row ${row}, ${name}: found "${cell}", expected a number. Correct the cell.`,
      });
      return Number.NaN;
    });
    const of = specimen === null ? null : (numbers[specimen] ?? Number.NaN);
    const own = traces.get(of) ?? [];
    own.push([numbers[x] ?? Number.NaN, numbers[force] ?? Number.NaN]);
    traces.set(of, own);
  }
  if (rows.length > MOST_SAMPLES)
    list.add(
      fileFault(
        'file_too_large',
        `${rows.length} samples`,
        `at most ${MOST_SAMPLES}`,
        'The record has too many samples. Export it at a lower rate.',
      ),
    );
  return list.faults.length > 0 ? [] : [...traces].map(([of, samples]) => ({ specimen: of, over, samples }));
}

const fileFault = (code: RowFault['code'], found: string, expected: string, message: string): RowFault => ({
  code,
  row: 0,
  column: '',
  found,
  expected,
  message,
});
