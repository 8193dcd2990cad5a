import type { BenchObservation } from './observation.js';

/** A shared effect: one column of the model. */
export interface EffectColumn {
  readonly name: string;
  /** whose spread it is drawn from; null for a certificate, whose uncertainty is stated */
  readonly cause: 'rig' | 'tester' | null;
  /** relative standard uncertainty of a certificate [1]; 0 otherwise */
  readonly stated: number;
}

/** Submissions beside the plain mean of their variant, so that all that is left is relative differences. */
export interface BenchTable {
  readonly variants: readonly string[];
  /** plain mean of each variant's submissions [unit of the values] */
  readonly plainMeans: Float64Array;
  readonly columns: readonly EffectColumn[];
  readonly submissions: readonly {
    readonly variant: number;
    /** value over the plain mean of its variant [1] */
    readonly relative: number;
    readonly variance: number;
    readonly degreesOfFreedom: number;
    /** positions of its columns */
    readonly columns: readonly number[];
  }[];
}

/** What the table says at one spread between submissions, with rigs and testers not yet weighed. */
export interface WithinVariants {
  /** weights of the submissions, 1/(σ_s² + v) [1] */
  readonly weights: Float64Array;
  /** sum of the weights of each variant [1] */
  readonly totals: Float64Array;
  /** weighted mean of each variant [1] */
  readonly means: Float64Array;
  /** n·q: share of each variant's weight that an effect touches [1] */
  readonly shares: Float64Array;
  /** q·q and q: what the differences within variants say of the effects [1] */
  readonly information: Float64Array;
  readonly score: Float64Array;
  /** Σ w(y − ȳ)² [1] */
  readonly squares: number;
  /** Σ ln(σ_s² + v) + Σ ln of the totals [1] */
  readonly logDeterminant: number;
}

/**
 * Sets submissions beside the plain mean of their variant, in the order of the names.
 *
 * Formula: y_s = x_s/x̄_v
 * @param observations means of submissions, above 0 [any one unit]
 * @returns the table; variants and columns sorted by name
 * @throws nothing: `fitBenchModel` checks the observations
 * @see COMMON-PRACTICE
 * @example benchTable([]).variants // []
 */
export function benchTable(observations: readonly BenchObservation[]): BenchTable {
  const variants = [...new Set(observations.map(({ variant }) => variant))].sort();
  const position = new Map(variants.map((variant, i) => [variant, i]));
  const sums = new Float64Array(variants.length);
  const counts = new Float64Array(variants.length);
  for (const { variant, value } of observations) {
    const i = position.get(variant)!;
    sums[i] = sums[i]! + value;
    counts[i] = counts[i]! + 1;
  }
  const plainMeans = sums.map((sum, i) => sum / counts[i]!);
  const columns = columnsOf(observations);
  const columnAt = new Map(columns.map(({ name }, c) => [name, c]));
  return {
    variants,
    plainMeans,
    columns,
    submissions: observations.map((observation) => ({
      variant: position.get(observation.variant)!,
      relative: observation.value / plainMeans[position.get(observation.variant)!]!,
      variance: observation.relativeVariance,
      degreesOfFreedom: observation.degreesOfFreedom,
      columns: namesOf(observation).map((name) => columnAt.get(name)!),
    })),
  };
}

const namesOf = ({ rig, tester, certificate }: BenchObservation): string[] => [
  ...(rig === null ? [] : [`rig:${rig}`]),
  `tester:${tester}`,
  ...(certificate ? [`certificate:${certificate.name}`] : []),
];

function columnsOf(observations: readonly BenchObservation[]): EffectColumn[] {
  const stated = new Map(observations.flatMap(({ certificate }) => (certificate ? [[`certificate:${certificate.name}`, certificate.relativeStandardUncertainty]] : [])));
  const names = [...new Set(observations.flatMap(namesOf))].sort();
  return names.map((name) => ({
    name,
    cause: name.startsWith('rig:') ? 'rig' : name.startsWith('tester:') ? 'tester' : null,
    stated: stated.get(name) ?? 0,
  }));
}

/**
 * Weighs submissions within their variants at a given spread between submissions, once for all spreads of rigs and testers.
 *
 * Formula: w = 1/(σ_s² + v); A_v = Σw; h_v = Σw·z/A_v; K₀ = Σw·z·zᵀ − Σ A_v·h_v·h_vᵀ; b₀ = Σw·z(y − ȳ_v)
 * @param table submissions
 * @param betweenVariance σ_s² [1]
 * @param isLeftOut variants that say nothing of the effects
 * @returns sums over the submissions [1]
 * @throws nothing
 * @see HENDERSON-1975
 * @example withinVariants(table, 1e-4, []).totals
 */
export function withinVariants(table: BenchTable, betweenVariance: number, isLeftOut: readonly boolean[]): WithinVariants {
  const { submissions, columns, variants } = table;
  const [n, q] = [variants.length, columns.length];
  const weights = Float64Array.from(submissions, ({ variance }) => 1 / (betweenVariance + variance));
  const totals = new Float64Array(n);
  const means = new Float64Array(n);
  const shares = new Float64Array(n * q);
  submissions.forEach(({ variant, relative, columns: own }, s) => {
    const w = weights[s]!;
    totals[variant] = totals[variant]! + w;
    means[variant] = means[variant]! + w * relative;
    for (const c of own) shares[variant * q + c] = shares[variant * q + c]! + w;
  });
  for (let v = 0; v < n; v++) {
    means[v] = means[v]! / totals[v]!;
    for (let c = 0; c < q; c++) shares[v * q + c] = shares[v * q + c]! / totals[v]!;
  }
  return { weights, totals, means, shares, ...informationOf(table, weights, totals, means, shares, isLeftOut) };
}

function informationOf(
  { submissions, columns }: BenchTable,
  weights: Float64Array,
  totals: Float64Array,
  means: Float64Array,
  shares: Float64Array,
  isLeftOut: readonly boolean[],
): Pick<WithinVariants, 'information' | 'score' | 'squares' | 'logDeterminant'> {
  const q = columns.length;
  const information = new Float64Array(q * q);
  const score = new Float64Array(q);
  let [squares, logDeterminant] = [0, 0];
  submissions.forEach(({ variant, relative, columns: own }, s) => {
    if (isLeftOut[variant]) return;
    const w = weights[s]!;
    const rest = relative - means[variant]!;
    squares += w * rest * rest;
    logDeterminant -= Math.log(w);
    for (const c of own) {
      score[c] = score[c]! + w * rest;
      for (const d of own) information[c * q + d] = information[c * q + d]! + w;
    }
  });
  totals.forEach((total, v) => {
    if (isLeftOut[v]) return;
    logDeterminant += Math.log(total);
    for (let c = 0; c < q; c++) {
      const h = shares[v * q + c]!;
      if (h === 0) continue;
      for (let d = 0; d < q; d++) information[c * q + d] = information[c * q + d]! - total * h * shares[v * q + d]!;
    }
  });
  return { information, score, squares, logDeterminant };
}
