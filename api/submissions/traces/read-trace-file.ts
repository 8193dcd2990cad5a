import { CsvError, parse } from 'csv-parse/sync';
import { FaultList } from '../intake/fault-list.js';
import { takeRecords } from '../intake/read-rows.js';
import { LONGEST_RECORD } from '../intake/file-limits.js';
import { notCsv } from '../intake/row-fault-words.js';
import type { Parsed } from '../intake/read-rows.js';
import { UnreadableFile } from '../intake/row-fault.js';
import type { RowFault } from '../intake/row-fault.js';
import { hasDecimalComma, separatorOfNumbers } from '../intake/separator.js';
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
  const separator = separatorOfNumbers(linesOfNumbers(text));
  const decimalComma = hasDecimalComma(separator);
  const start = startOfNumbers(text, separator, decimalComma);
  try {
    if (text.trim() === '') list.add(emptyFile);
    else if (!start) list.add(withoutNumbers);
    else {
      const header = recordsOf(text.slice(0, start.at), separator, 0);
      const rows = recordsOf(text.slice(start.at), separator, start.line);
      const columns = readTraceHeader(header, rows[0]?.cells.length ?? 0, list);
      const traces = columns ? readSamples(rows, columns, decimalComma, list) : [];
      return { traces, faults: list.faults, furtherFaults: list.furtherFaults };
    }
  } catch (error) {
    if (!(error instanceof UnreadableFile)) throw error;
    list.add(error.fault);
  }
  return { traces: [], faults: list.faults, furtherFaults: list.furtherFaults };
}

/** Of the first lines, the last ones, which are deepest below the header. */
const linesOfNumbers = (text: string): string[] =>
  text
    .split(/\r\n|\n|\r/, DEEPEST_HEADER + 10)
    .filter((line) => line.trim() !== '')
    .slice(-5);

/** Where the first line begins that has numbers in all its cells, and how many lines are above it; null where no header is so deep. */
function startOfNumbers(text: string, separator: string, decimalComma: boolean): { at: number; line: number } | null {
  const end = /\r\n|\n|\r|$/g;
  let depth = 0;
  for (let at = 0, line = 0; depth <= DEEPEST_HEADER && at < text.length; line += 1) {
    end.lastIndex = at;
    const found = end.exec(text);
    const cells = text
      .slice(at, Math.min(found?.index ?? text.length, at + LONGEST_RECORD))
      .split(separator)
      .map(bare);
    if (cells.at(-1) === '') cells.pop();
    if (cells.length > 1 && cells.every((cell) => isNumber(cell, decimalComma))) return { at, line };
    if (cells.length > 0) depth += 1;
    at = (found?.index ?? text.length) + (found?.[0].length ?? 0);
  }
  return null;
}

const bare = (cell: string): string => cell.trim().replace(/^"(.*)"$/, '$1');

/** @throws UnreadableFile with the line from which on it is not CSV */
function recordsOf(text: string, delimiter: string, linesAbove: number): TraceRow[] {
  try {
    const records = parse(text, {
      bom: true,
      delimiter,
      record_delimiter: ['\r\n', '\n', '\r'],
      relax_column_count: true,
      relax_quotes: true,
      max_record_size: LONGEST_RECORD,
      info: true,
      trim: true,
      on_record: takeRecords(linesAbove),
    }) as unknown as Parsed[];
    return records.map(({ record, info }) => ({
      row: linesAbove + info.lines,
      cells: record.at(-1) === '' ? record.slice(0, -1) : record,
    }));
  } catch (error) {
    throw error instanceof CsvError ? new UnreadableFile(notCsv(error, linesAbove)) : error;
  }
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

const emptyFile = fileFault('file_empty', 'nothing', 'a header and rows of numbers', 'The file is empty. Send the record of the pull.');

const withoutNumbers = fileFault(
  'file_not_csv',
  `no row of numbers only among the first ${DEEPEST_HEADER + 1}`,
  `a header of at most ${DEEPEST_HEADER} lines, and below it two or three columns of numbers`,
  `None of the first ${DEEPEST_HEADER + 1} rows has numbers in all its cells. Export the record as plain CSV with its header, without the lines that say nothing of the columns.`,
);
