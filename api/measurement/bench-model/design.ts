import { MeasurementError } from '../errors.js';
import type { BenchSeries, BenchSubmission } from './bench-series.js';

/** An effect that several submissions share. */
export interface SharedColumn {
  readonly name: string;
  readonly kind: 'rig' | 'tester' | 'certificate';
  /** relative standard deviation of a certificate; of a rig or tester it is what the model finds */
  readonly knownSd: number;
}

/** A series as the model takes it: submissions sorted by variant, values relative to the centre of their variant. */
export interface Design {
  readonly variants: readonly string[];
  readonly centres: Float64Array;
  /** rows of variant v are starts[v] … starts[v + 1] − 1 */
  readonly starts: Int32Array;
  readonly y: Float64Array;
  readonly repeatability: Float64Array;
  readonly degreesOfFreedom: Float64Array;
  readonly columns: readonly SharedColumn[];
  /** columns of row s are columnOf[columnStarts[s]] … */
  readonly columnStarts: Int32Array;
  readonly columnOf: Int32Array;
}

/** Below this a mean is taken as known: one part in a hundred thousand, squared. */
const LEAST_VARIANCE = 1e-10;

/**
 * Lays a series out for the model.
 *
 * Formula: y = x/c − 1, c the mean of the variant's submissions weighted by 1/v
 * @param series submissions [any one unit]
 * @returns rows by variant, in the order of the names
 * @throws MeasurementError 'bench-model/bad-submission' for a value, variance or degrees of freedom that no model can take; 'bench-model/not-positive' for a centre
 * @see COMMON-PRACTICE
 * @example designOf(series).variants // ['a', 'b']
 */
export function designOf(series: Pick<BenchSeries, 'submissions'>): Design {
  const { submissions } = series;
  submissions.forEach(requireSubmission);
  const variants = [...new Set(submissions.map(({ variant }) => variant))].sort();
  const byVariant = new Map(variants.map((variant): [string, BenchSubmission[]] => [variant, []]));
  for (const submission of submissions) byVariant.get(submission.variant)!.push(submission);
  const rows = variants.flatMap((variant) => byVariant.get(variant)!);
  const centres = Float64Array.from(variants, (variant) => centreOf(byVariant.get(variant)!));
  const starts = new Int32Array(variants.length + 1);
  variants.forEach((variant, v) => (starts[v + 1] = starts[v]! + byVariant.get(variant)!.length));
  const columns = columnsOf(rows);
  const position = new Map(columns.map(({ kind, name }, at) => [`${kind}:${name}`, at]));
  const ofRows = rows.map((row) => columnsOf([row]).map(({ kind, name }) => position.get(`${kind}:${name}`)!));
  const columnStarts = new Int32Array(rows.length + 1);
  ofRows.forEach((own, s) => (columnStarts[s + 1] = columnStarts[s]! + own.length));
  const centreOfRow = variants.flatMap((variant, v) => byVariant.get(variant)!.map(() => centres[v]!));
  return {
    variants,
    centres,
    starts,
    y: Float64Array.from(rows, ({ value }, s) => value / centreOfRow[s]! - 1),
    repeatability: Float64Array.from(rows, ({ relativeVariance }) => Math.max(LEAST_VARIANCE, relativeVariance)),
    degreesOfFreedom: Float64Array.from(rows, ({ degreesOfFreedom }) => degreesOfFreedom),
    columns,
    columnStarts,
    columnOf: Int32Array.from(ofRows.flat()),
  };
}

/**
 * How many differences within variants a design has: all that tells of rigs, testers and spools.
 *
 * Formula: submissions − variants
 * @param design series as the model takes it
 * @returns count
 * @throws nothing
 * @see COMMON-PRACTICE
 * @example contrastsOf(designOf(series)) // 2
 */
export const contrastsOf = ({ y, variants }: Pick<Design, 'y' | 'variants'>): number => y.length - variants.length;

function centreOf(own: readonly BenchSubmission[]): number {
  const weights = own.map(({ relativeVariance }) => 1 / Math.max(LEAST_VARIANCE, relativeVariance));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const centre = own.reduce((sum, { value }, s) => sum + value * (weights[s]! / total), 0);
  if (centre > 0) return centre;
  throw new MeasurementError(
    'bench-model/not-positive',
    `designOf: the submissions of ${own[0]!.variant} have a mean of ${centre}, expected above 0. Relative effects need quantities above 0.`,
  );
}

function columnsOf(rows: readonly BenchSubmission[]): SharedColumn[] {
  const found = new Map<string, SharedColumn>();
  const add = (column: SharedColumn): void => void found.set(`${column.kind}:${column.name}`, column);
  for (const { rig, tester, certificates } of rows) {
    if (rig !== null) add({ name: rig, kind: 'rig', knownSd: 0 });
    add({ name: tester, kind: 'tester', knownSd: 0 });
    for (const { name, relativeStandardUncertainty } of certificates)
      add({ name, kind: 'certificate', knownSd: relativeStandardUncertainty });
  }
  return [...found].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, column]) => column);
}

function requireSubmission({ variant, value, relativeVariance, degreesOfFreedom, certificates }: BenchSubmission, s: number): void {
  const isKnown = Number.isFinite(value) && relativeVariance >= 0 && relativeVariance < Infinity && degreesOfFreedom > 0;
  if (isKnown && certificates.every((one) => one.relativeStandardUncertainty >= 0 && one.relativeStandardUncertainty < Infinity)) return;
  throw new MeasurementError(
    'bench-model/bad-submission',
    `designOf: submission ${s + 1} (${variant}) is ${value} with relative variance ${relativeVariance} of ${degreesOfFreedom} degrees of freedom, expected finite numbers, 0 or more, with degrees above 0, also in its certificates. Moderate the variances or leave it out.`,
  );
}
