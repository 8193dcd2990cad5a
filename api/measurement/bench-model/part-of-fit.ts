import type { Design } from './design.js';
import type { FittedSeries } from './fit-series.js';
import type { SubmissionLevel } from './submission-level.js';

/**
 * What a fitted series says of some of its variants: effects and spreads stay those that all of them told.
 *
 * Formula: none
 * @param fit fitted series
 * @param isWanted whether a variant is wanted
 * @returns the same fit without the rows of the others
 * @throws nothing
 * @see COMMON-PRACTICE
 * @example partOfFit(fit, (variant) => variant === 'a').design.variants // ['a']
 */
export function partOfFit(fit: FittedSeries, isWanted: (variant: string) => boolean): FittedSeries {
  const { design } = fit;
  const wanted = design.variants.flatMap((variant, v) => (isWanted(variant) ? [v] : []));
  const rows = wanted.flatMap((v) => Array.from({ length: design.starts[v + 1]! - design.starts[v]! }, (_, s) => design.starts[v]! + s));
  const levels = new Map<SubmissionLevel, SubmissionLevel>();
  const partOf = (level: SubmissionLevel): SubmissionLevel => {
    const known = levels.get(level) ?? {
      ...level,
      shares: picked(level.shares, rows),
      ownVariance: picked(level.ownVariance, wanted),
      means: picked(level.means, wanted),
    };
    levels.set(level, known);
    return known;
  };
  return {
    ...fit,
    design: partOfDesign(design, wanted, rows),
    atoms: fit.atoms.map((atom) => ({ ...atom, level: partOf(atom.level), means: picked(atom.means, wanted) })),
    values: picked(fit.values, wanted),
    means: picked(fit.means, wanted),
    isApart: Uint8Array.from(wanted, (v) => fit.isApart[v]!),
  };
}

function partOfDesign(design: Design, wanted: readonly number[], rows: readonly number[]): Design {
  const { starts, columnStarts, columnOf } = design;
  const columnsOfRows = rows.map((s) => [...columnOf.subarray(columnStarts[s], columnStarts[s + 1])]);
  return {
    ...design,
    variants: wanted.map((v) => design.variants[v]!),
    centres: picked(design.centres, wanted),
    starts: ends(wanted.map((v) => starts[v + 1]! - starts[v]!)),
    y: picked(design.y, rows),
    repeatability: picked(design.repeatability, rows),
    degreesOfFreedom: picked(design.degreesOfFreedom, rows),
    columnStarts: ends(columnsOfRows.map((columns) => columns.length)),
    columnOf: Int32Array.from(columnsOfRows.flat()),
  };
}

const picked = (all: Float64Array, positions: readonly number[]): Float64Array => Float64Array.from(positions, (at) => all[at]!);

/** Where each of several runs of rows begins, and where the last ends. */
function ends(lengths: readonly number[]): Int32Array {
  const result = new Int32Array(lengths.length + 1);
  lengths.forEach((length, at) => (result[at + 1] = result[at]! + length));
  return result;
}
