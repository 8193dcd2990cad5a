import { say } from '../words/say.js';
import type { ComparedFigure, ComparedTables, ComparedVariant } from './compared.js';
import { differenceOf } from './difference.js';

/** A difference as it is shown: with its 95 % interval, to the decimals of the published values. */
export interface ShownDifference {
  readonly value: string;
  readonly interval: string;
}

/** What can be said of a variant beside another in one category. */
export interface Beside {
  readonly difference: ShownDifference | null;
  readonly trade: ShownDifference | null;
  /** Chance that the first is the better of the two [whole %]; null where an interval is not stated. */
  readonly percent: number | null;
}

const decimalsOf = (text: string): number => text.split('.')[1]?.length ?? 0;
/** With its sign; what rounds to nothing has none. */
function signed(value: number, decimals: number): string {
  const text = Math.abs(value).toFixed(decimals);
  if (Number(text) === 0) return text;
  return `${value < 0 ? '\u2212' : '+'}${text}`;
}

/** One category of two variants: null where either has no result. */
export function besideIn({ categories }: ComparedTables, at: number, one: ComparedVariant, other: ComparedVariant): Beside | null {
  const [row, against] = [one.categories[at], other.categories[at]];
  if (!row || !against) return null;
  const found = of(row, against);
  const ahead = found && (categories[at]?.direction === 'less' ? 1 - found.chance : found.chance);
  return {
    difference: shown(row, against),
    trade: row.trade && against.trade && shown(row.trade, against.trade),
    percent: publishedOf(row, other) ?? complementOf(publishedOf(against, one)) ?? (ahead === null ? null : Math.round(100 * ahead)),
  };
}

const complementOf = (percent: number | null): number | null => (percent === null ? null : 100 - percent);

/** Neighbours have a published chance, which stands. */
function publishedOf({ next }: { readonly next: { slug: string; percent: string } | null }, { slug }: ComparedVariant): number | null {
  return next?.slug === slug ? Math.round(Number(next.percent)) : null;
}

function of(one: ComparedFigure, other: ComparedFigure) {
  if (one.low === null || one.high === null || other.low === null || other.high === null) return null;
  const numbers = ({ value, low, high }: ComparedFigure) => ({ value: Number(value), low: Number(low), high: Number(high) });
  return differenceOf(numbers(one), numbers(other));
}

function shown(one: ComparedFigure, other: ComparedFigure): ShownDifference {
  const decimals = Math.max(decimalsOf(one.value), decimalsOf(other.value));
  const found = of(one, other);
  return {
    value: signed(Number(one.value) - Number(other.value), decimals),
    interval: found ? say`${signed(found.low, decimals)} to ${signed(found.high, decimals)}` : say`not stated`,
  };
}

/** Chance that one is ahead of the other overall, as published [whole %]; null where it is not stated. */
export function aheadOverall({ pairs }: ComparedTables, one: ComparedVariant, other: ComparedVariant): number | null {
  const at = ({ slug }: ComparedVariant) => pairs.variants.indexOf(slug);
  return pairs.aheadPercent[at(one)]?.[at(other)] ?? null;
}
