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
  readonly meaning: string;
  /** Column of the published tables that it is taken from. */
  readonly from: string;
}

/** Name, kind, meaning and, where it is called otherwise there, the column of the published table. */
const column = (name: string, kind: Kind, meaning: string, from = name): Column => ({ name, kind, meaning, from });
const COLUMNS: readonly Column[] = [
  column('edition', 'STRING', 'slug of the edition'),
  column('revision', 'INT32', 'its revision as published last'),
  column('division', 'STRING', 'slug of the division; empty where there is one alone'),
  column('category', 'STRING', 'slug of the category'),
  column('variant', 'STRING', 'slug of the variant'),
  column('maker', 'STRING', 'name of the maker'),
  column('line', 'STRING', 'name of the line'),
  column('size', 'STRING', 'size as sold'),
  column('colour', 'STRING', 'colour'),
  column('material', 'STRING', 'material'),
  column('construction', 'STRING', 'how the line is made'),
  column('carriers', 'INT32', 'ends braided; empty where it is not braided'),
  column('peNumber', 'STRING', 'PE number of the label; empty where it has none', 'pe number'),
  column('place', 'INT32', 'competition place; empty when not placed'),
  column('placeIfIncluded', 'INT32', 'place that an excluded row would have had', 'place if included'),
  column('group', 'INT32', 'too-close-to-call group, 1 is the top group'),
  column('placeLow', 'INT32', 'best place that the evidence allows', 'place low'),
  column('placeHigh', 'INT32', 'worst place that the evidence allows', 'place high'),
  column('value', 'DOUBLE', 'the figure, in unit'),
  column('low95', 'DOUBLE', 'lower end of its 95 % interval, in unit', 'low 95 %'),
  column('high95', 'DOUBLE', 'upper end of its 95 % interval, in unit', 'high 95 %'),
  column('unit', 'STRING', 'unit of the three'),
  column('specimens', 'INT32', 'specimens behind it'),
  column('submissions', 'INT32', 'submissions behind it'),
  column('testers', 'INT32', 'testers behind it'),
  column('rigs', 'INT32', 'rigs behind it'),
  column(
    'diameter',
    'DOUBLE',
    'measured diameter of the variant, in diameterUnit; empty where none was measured or the release is older than the column',
  ),
  column('diameterLow95', 'DOUBLE', 'lower end of its 95 % interval, in diameterUnit', 'diameter low 95 %'),
  column('diameterHigh95', 'DOUBLE', 'upper end of its 95 % interval, in diameterUnit', 'diameter high 95 %'),
  column('diameterUnit', 'STRING', 'unit of the diameter and its interval', 'diameter unit'),
];

/** What the table holds, column by column. */
export const RESULT_COLUMNS_IN_WORDS = `Its columns: ${COLUMNS.map(({ name, meaning }) => `${name} (${meaning})`).join(', ')}.`;

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
