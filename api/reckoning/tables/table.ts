/** A table of a release: its columns in words and units, its keys, its rows. */
export type Cell = string | number | null;

export interface Column {
  readonly name: string;
  readonly type: 'string' | 'integer' | 'number' | 'date';
  readonly description: string;
  /** Symbol of the unit; absent where the column has none or another column names it. */
  readonly unit?: string;
  /** A cell may be empty. */
  readonly isOptional?: true;
}

export interface ForeignKey {
  readonly columns: readonly string[];
  /** Name of the other table. */
  readonly table: string;
  readonly references: readonly string[];
}

export interface Table {
  readonly name: string;
  readonly title: string;
  readonly columns: readonly Column[];
  readonly primaryKey: readonly string[];
  readonly foreignKeys: readonly ForeignKey[];
  readonly rows: readonly Readonly<Record<string, Cell>>[];
}

export const text = (name: string, description: string): Column => ({ name, type: 'string', description });
export const integer = (name: string, description: string): Column => ({ name, type: 'integer', description });
export const number = (name: string, description: string): Column => ({ name, type: 'number', description });
export const optional = (column: Column): Column => ({ ...column, isOptional: true });
export const inUnit = (unit: string, column: Column): Column => ({ ...column, unit });

export const VARIANT = text('variant', 'Variant, by its slug');
export const OF_VARIANT: ForeignKey = { columns: ['variant'], table: 'variants', references: ['variant'] };
export const SUBMISSION = text('submission', 'Reference of the submission');
export const OF_SUBMISSION: ForeignKey = { columns: ['submission'], table: 'submissions', references: ['submission'] };
