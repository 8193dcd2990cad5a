import { inNameOrder } from './locale.js';
import { say } from './say.js';
import { differenceOf } from '../weigh/difference.js';
import { inUnits, textsInUnits, type System } from './in-units.js';
import type { FindIndex, FindLine, FindRow, FindTable } from '../release/find-index.js';

/** What a reader fishes, and what matters to them; empty where it does not. */
export interface Wish {
  readonly make: string;
  /** Number that is wanted; with one that it may reach, from the one to the other. */
  readonly pe: string;
  readonly peTo: string;
  /** Diameter [mm] that is wanted, give or take a tenth of it. */
  readonly about: number | null;
  readonly diameter: Range;
  readonly force: Range;
  readonly isObtainable: boolean;
  /** Code of the table that decides. */
  readonly by: string;
}

export interface Range {
  readonly from: number | null;
  readonly to: number | null;
}

/** A line that fits, with its row in the table that decides. */
export interface Fit {
  readonly line: FindLine;
  readonly row: FindRow;
}

/** The lines that fit a wish and have a place in the table that decides, in its published order. */
export function fitsOf({ tables, lines }: FindIndex, wish: Wish): Fit[] {
  const at = Math.max(
    0,
    tables.findIndex(({ code }) => code === wish.by),
  );
  return lines
    .flatMap((line) => {
      const row = line.rows[at];
      return row && fits(line, wish) ? [{ line, row }] : [];
    })
    .sort((one, other) => one.row.place - other.row.place || inNameOrder(one.line.name, other.line.name));
}

const fits = (line: FindLine, { make, pe, peTo, about, diameter, force, isObtainable }: Wish): boolean =>
  (make === '' || line.make === make) &&
  isWithin(line.pe, { from: numberOf(pe), to: numberOf(peTo === '' ? pe : peTo) }) &&
  isWithin(line.diameterMm, near(about)) &&
  isWithin(line.diameterMm, diameter) &&
  isWithin(line.forceN, force) &&
  (!isObtainable || line.isObtainable);

const numberOf = (text: string): number | null => (text === '' ? null : Number(text));

const NEAR = 0.1;
const near = (about: number | null): Range =>
  about === null ? { from: null, to: null } : { from: about * (1 - NEAR), to: about * (1 + NEAR) };

function isWithin(text: string | null, { from, to }: Range): boolean {
  if (from === null && to === null) return true;
  return text !== null && (from === null || Number(text) >= from) && (to === null || Number(text) <= to);
}

/** What can be said of the first of those that fit beside the second, from what is published: the chance of the two, or from their intervals alone where no chance is. */
export function leadOf({ pairs }: FindIndex, table: FindTable, fits: readonly Fit[]): string {
  const [first, second] = fits;
  if (!first) return say`Nothing fits. Widen a range, or take a wish back.`;
  const only = say`${first.line.name} is the only one of ${table.placed} that fits.`;
  if (!second) return only;
  const among = say`${first.line.name} stands first of the ${fits.length} that fit`;
  if (first.row.place === second.row.place) return say`${among}, level with ${second.line.name}.`;
  const percent =
    table.code === 'overall' ? ofPair(pairs, first, second) : (ofNeighbours(first, second) ?? ofIntervals(table, first, second));
  if (percent !== null && percent < 95)
    return say`${among}; too close to call: the chance that it is ahead of ${second.line.name} is ${percent} %.`;
  if (percent !== null) return say`${among}, ahead of ${second.line.name} with ${percent > 99 ? say`more than 99` : percent} %.`;
  if (first.row.group === null || second.row.group === null) return say`${among}; how sure that is was not stated.`;
  return first.row.group < second.row.group
    ? say`${among}; the evidence tells it from ${second.line.name}, over the whole table at once.`
    : say`${among}; too close to call beside ${second.line.name}.`;
}

function ofPair(pairs: FindIndex['pairs'], first: Fit, second: Fit): number | null {
  const at = ({ line }: Fit) => pairs.variants.indexOf(line.slug);
  return pairs.aheadPercent[at(first)]?.[at(second)] ?? null;
}

function ofNeighbours({ row: { next } }: Fit, { line }: Fit): number | null {
  return next?.slug === line.slug && next.aheadPercent !== null ? Math.round(Number(next.aheadPercent)) : null;
}

/** Two that do not follow each other in a table, as the page of comparisons has it. */
function ofIntervals({ direction }: FindTable, { row: first }: Fit, { row: second }: Fit): number | null {
  const [one, other] = [intervalOf(first), intervalOf(second)];
  if (!one || !other) return null;
  const { chance } = differenceOf(one, other);
  return Math.round(100 * (direction === 'less' ? 1 - chance : chance));
}

const intervalOf = ({ value, low, high }: FindRow) =>
  low === null || high === null ? null : { value: Number(value), low: Number(low), high: Number(high) };

/** Texts of a reader's choice of units, SI first. */
export type InSystems = readonly { readonly system: System; readonly text: string }[];

export const SYSTEMS = ['si', 'trade', 'kgf'] as const;

/** What a number reads in a system: in SI units where that has none of its own for it. */
export function textIn(system: System, value: string, unit: string): string {
  const all = textsInUnits(value, unit);
  return (all.find((one) => one.system === system) ?? all[0])?.text ?? '';
}

/** Why a line stands in the list: `place 3 of 41; could be first; 0.213 mm; 96.2 N`. */
export const reasonsOf = ({ line, row }: Fit, table: FindTable): InSystems =>
  SYSTEMS.map((system) => ({
    system,
    text: [
      say`place ${row.place} of ${table.placed}`,
      row.couldBeFirst ? say`could be first` : null,
      line.diameterMm && textIn(system, line.diameterMm, 'mm'),
      line.forceN && textIn(system, line.forceN, 'N'),
      line.isObtainable ? null : say`cannot be bought any more`,
      line.isRemarked ? say`† words stand beside its figures` : null,
    ]
      .filter((part) => part !== null)
      .join('; '),
  }));

/** A value with its interval in the unit of its table; of the overall order the score. */
export function figureOf({ value, low, high }: FindRow, { unit }: FindTable): InSystems {
  if (unit === null) return [{ system: 'si', text: say`score ${value}` }];
  return inUnits({ value, low, high, unit }).map(({ system, unit: own, ...ends }) => ({
    system,
    text: `${ends.value} ${own}${ends.low !== null && ends.high !== null ? say` (${ends.low} to ${ends.high})` : ''}`,
  }));
}
