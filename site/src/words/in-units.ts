import { intervalWords } from './interval-words.js';

/** Units as a reader may have them: SI; pounds, inches, psi; or SI with kilograms-force, as most labels print. */
export type System = 'si' | 'trade' | 'kgf';

interface Ends {
  readonly value: string;
  readonly low: string | null;
  readonly high: string | null;
}

/** A published figure, or a claim. */
export interface Measured extends Ends {
  readonly unit: string;
  /** The same in the trade's unit, as published; converted where there is none. */
  readonly trade?: (Ends & { readonly unit: string }) | null | undefined;
  /** Unit → text as printed on a label, which stands in its own unit. */
  readonly printed?: { readonly text: string; readonly unit: string } | undefined;
}

interface Unit {
  readonly unit: string;
  /** One of it in the SI unit that is shown: exact factors of NIST SP 811, appendix B.8. */
  readonly inSi: number;
  /** Decimals more than the SI text has, so that no digit is lost and none is made up. */
  readonly decimals: number;
}

const LBF: Unit = { unit: 'lbf', inSi: 4.4482216152605, decimals: 1 };
const KGF: Unit = { unit: 'kgf', inSi: 9.80665, decimals: 1 };
const INCH: Unit = { unit: 'in', inSi: 25.4, decimals: 1 };
/** lbf/in² in N/mm². */
const PSI: Unit = { unit: 'psi', inSi: LBF.inSi / INCH.inSi ** 2, decimals: -2 };

const OTHERS: Record<string, Partial<Record<System, Unit>>> = { N: { trade: LBF, kgf: KGF }, mm: { trade: INCH }, MPa: { trade: PSI } };
const SYSTEMS = ['trade', 'kgf'] as const;

/** Units beside an SI unit in which a reader may want it. */
export const unitsBeside = (unit: string): { system: System; unit: string; inSi: number }[] =>
  SYSTEMS.flatMap((system) => {
    const other = OTHERS[unit]?.[system];
    return other ? [{ system, ...other }] : [];
  });

const MOST_DECIMALS = 4;

/** Of a number that is published in SI units, decimals in another unit: as many digits, and no more than two of its uncertainty. */
function placesIn({ inSi, decimals }: Unit, { value, low, high }: Ends): number {
  const halfWidth = (Number(high) - Number(low)) / 2 / inSi;
  const ofTwoDigits = halfWidth > 0 ? 1 - Math.floor(Math.log10(Number(halfWidth.toPrecision(2)))) : MOST_DECIMALS;
  return Math.max(0, Math.min(MOST_DECIMALS, ofTwoDigits, (value.split('.')[1]?.length ?? 0) + decimals));
}

/** A figure in every system that has a unit of its own for it, SI first. */
export function inUnits({ trade, printed, ...si }: Measured): ({ system: System; unit: string } & Ends)[] {
  const beside = SYSTEMS.flatMap((system) => {
    const other = OTHERS[si.unit]?.[system];
    if (system === 'trade' && trade) return [{ system, ...trade }];
    if (!other) return [];
    if (printed?.unit === other.unit) return [{ system, unit: other.unit, value: printed.text, low: null, high: null }];
    const places = placesIn(other, si);
    const converted = (text: string): string => (Number(text) / other.inSi).toFixed(places);
    const [low, high] = [si.low, si.high].map((text) => (text === null ? null : converted(text)));
    return [{ system, unit: other.unit, value: converted(si.value), low: low ?? null, high: high ?? null }];
  });
  return [{ system: 'si', ...si }, ...beside];
}

/** A single number with its unit, in every system: `98.2 N`, `22.08 lbf`, `10.01 kgf`. */
export const textsInUnits = (value: string, unit: string): { system: System; text: string }[] =>
  inUnits({ value, low: null, high: null, unit }).map((one) => ({ system: one.system, text: `${one.value} ${one.unit}` }));

/** Ends of a drawn scale, in every system. */
export function scaleInUnits(from: string, to: string, unit: string): { system: System; from: string; to: string }[] {
  const [starts, ends] = [from, to].map((value) => inUnits({ value, low: null, high: null, unit }));
  return (ends ?? []).map((end, i) => ({ system: end.system, from: starts?.[i]?.value ?? from, to: `${end.value}\u00a0${end.unit}` }));
}

/** What a part of a figure reads in a system. */
export const partWords = (part: 'value' | 'interval', ends: Ends): string => (part === 'value' ? ends.value : intervalWords(ends));
