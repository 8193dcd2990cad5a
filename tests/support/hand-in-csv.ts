import type { InventedVariant, MethodSlug } from './season.js';

/** One reading of a force as the display shows it. */
export interface Pull {
  readonly number: number;
  readonly condition: 'untreated' | 'treated';
  readonly text: string;
}
/** Two widths of one piece. */
export interface Piece {
  readonly number: number;
  readonly wideMm: string;
  readonly narrowMm: string;
}
const SCATTER_PERCENT = [0.93, -1.31, 0.42, -0.64, 1.57, -0.88, 1.12, -1.21];

/** Invented pulls around a mean [in the unit of the display]; another seed gives other readings around the same mean. */
export function inventPulls(mean: number, condition: Pull['condition'], seed: number, firstNumber = 1): Pull[] {
  return Array.from({ length: 6 }, (_, i) => {
    const scatter = SCATTER_PERCENT[(i * 3 + seed) % SCATTER_PERCENT.length]! + 0.037 * ((i * 7 + seed * 5) % 11);
    return { number: firstNumber + i, condition, text: (mean * (1 + scatter / 100)).toFixed(2) };
  });
}

/** What the bench reads of one variant by one method; force in newtons unless the display is in another unit. */
export function inventPullsOf(variant: InventedVariant, method: MethodSlug, seed: number, newtonsPerUnit = 1): Pull[] {
  const mean = variant.forceN / newtonsPerUnit;
  const straight = inventPulls(mean, 'untreated', seed);
  if (method === 'straight-pull') return straight;
  const kept = method === 'named-knot' ? variant.knotPercent : variant.abrasionPercent;
  return [...straight, ...inventPulls((mean * kept) / 100, 'treated', seed + 3, 7)];
}

export function inventPieces(variant: InventedVariant, seed: number): Piece[] {
  return Array.from({ length: 5 }, (_, i) => {
    const middle = variant.diameterMm + 0.001 * (((i * 2 + seed) % 4) - 1);
    return { number: i + 1, wideMm: (middle + 0.006).toFixed(3), narrowMm: (middle - 0.006).toFixed(3) };
  });
}

interface Occasion {
  readonly edition: string;
  readonly spool: string;
  readonly instrument: string;
  readonly benchDay?: string;
  readonly methodVersion?: number;
}

const HEADER =
  'edition,spool,method,method version,bench day,zone,instruments,temperature [°C],humidity,specimen,condition,force,force unit,station,wide diameter [mm],narrow diameter [mm]';
const start = ({ edition, spool, instrument, benchDay = '2026-03-10', methodVersion = 1 }: Occasion, method: string) =>
  [edition, spool, method, methodVersion, benchDay, 'Europe/Lisbon', instrument, '21.5', '55'].join(',');

export const pullRows = (occasion: Occasion, method: string, pulls: readonly Pull[], unit = 'N'): string[] =>
  pulls.map(({ number, condition, text }) => `${start(occasion, method)},${number},${condition},${text},${unit},,,`);

export const diameterRows = (occasion: Occasion, pieces: readonly Piece[]): string[] =>
  pieces.map(({ number, wideMm, narrowMm }) => `${start(occasion, 'diameter')},${number},untreated,,,1,${wideMm},${narrowMm}`);

/** A hand-in file with its header. */
export const csvFile = (rows: readonly string[]): string => `${[HEADER, ...rows].join('\r\n')}\r\n`;
