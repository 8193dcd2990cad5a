/** What the knot methods share. */
import type { MethodSeries } from '../../../api/contract/method-series.js';
import { PULLING_SOURCES, UNTREATED } from './pulling.js';

export const KNOT_RETENTION = {
  figure: 'Knot retention R',
  formula: 'R = 100 · K / F',
  where:
    'K is the mean breaking force of the knotted specimens, F that of the straight ones of the same spool on the same rig and day; the interval is by Fieller’s theorem',
};
export const KNOT_SOURCES = ['Fieller 1954, Some problems in interval estimation: the interval of a ratio', ...PULLING_SOURCES];
export const KNOT_PLACES = { retention: 1, breakingForce: 1 };

/** Straight pulls, and knotted ones to compare with them. */
export const knotted = (name: string, words: string): MethodSeries[] => [
  UNTREATED,
  { code: 'knotted', kind: 'breakingForce', treatment: { kind: 'knot', name, words } },
];
