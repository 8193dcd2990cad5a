/** All results of all editions as one table, for those who analyse them. Pure. */
import { parse } from 'csv-parse/sync';
import { stringify } from 'csv-stringify/sync';
import { parquetWriteBuffer } from 'hyparquet-writer';

/** Tables of a release as it published them. */
export interface PublishedTables {
  readonly edition: string;
  readonly revision: number;
  /** csv/results.csv and csv/variants.csv. */
  readonly results: string;
  readonly variants: string;
}

type Kind = 'STRING' | 'INT32' | 'DOUBLE';
interface Column {
  readonly name: string;
  readonly kind: Kind;
  /** Column of the published tables that it is taken from. */
  readonly from: string;
}

/** Name, kind and, where it is called otherwise there, the column of the published table. */
const column = (name: string, kind: Kind, from = name): Column => ({ name, kind, from });
const COLUMNS: readonly Column[] = [
  column('edition', 'STRING'),
  column('revision', 'INT32'),
  column('division', 'STRING'),
  column('category', 'STRING'),
  column('variant', 'STRING'),
  column('maker', 'STRING'),
  column('line', 'STRING'),
  column('size', 'STRING'),
  column('colour', 'STRING'),
  column('material', 'STRING'),
  column('construction', 'STRING'),
  column('carriers', 'INT32'),
  column('peNumber', 'STRING', 'pe number'),
  column('place', 'INT32'),
  column('placeIfIncluded', 'INT32', 'place if included'),
  column('group', 'INT32'),
  column('placeLow', 'INT32', 'place low'),
  column('placeHigh', 'INT32', 'place high'),
  column('value', 'DOUBLE'),
  column('low95', 'DOUBLE', 'low 95 %'),
  column('high95', 'DOUBLE', 'high 95 %'),
  column('unit', 'STRING'),
  column('specimens', 'INT32'),
  column('submissions', 'INT32'),
  column('testers', 'INT32'),
  column('rigs', 'INT32'),
];

type Row = Readonly<Record<string, string>>;
const rowsOf = (csv: string): Row[] => parse(csv, { columns: true, bom: true });

/** One row for each variant in each category of each edition, in the words of the releases; decimals as published. */
export function resultRows(releases: readonly PublishedTables[]): Row[] {
  return releases.flatMap(({ edition, revision, results, variants }) => {
    const named = new Map(rowsOf(variants).map((row) => [row['variant'], row]));
    return rowsOf(results).map((row) => {
      const known: Row = { ...named.get(row['variant']), ...row, edition, revision: String(revision) };
      return Object.fromEntries(COLUMNS.map(({ name, from }) => [name, known[from] ?? '']));
    });
  });
}

/** RFC 4180, with a header row. */
export const resultsCsv = (rows: readonly Row[]): Buffer =>
  Buffer.from(stringify([...rows], { header: true, columns: COLUMNS.map(({ name }) => name), record_delimiter: '\r\n' }));

/** Apache Parquet; empty cells are null. */
export function resultsParquet(rows: readonly Row[]): Buffer {
  const columnData = COLUMNS.map(({ name, kind }) => ({
    name,
    type: kind,
    nullable: true,
    data: rows.map((row) => valueOf(row[name] ?? '', kind)),
  }));
  return Buffer.from(parquetWriteBuffer({ columnData }));
}

const valueOf = (text: string, kind: Kind): string | number | null => (text === '' ? null : kind === 'STRING' ? text : Number(text));
