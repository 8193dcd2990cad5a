import type { MethodSeries } from '../../api/contract/method-series.js';

const UNTREATED: MethodSeries = { code: 'untreated', kind: 'breakingForce', treatment: null };
const treated = (code: string, kind: 'knot' | 'abrasion', name: string): [MethodSeries, MethodSeries] => [
  UNTREATED,
  { code, kind: 'breakingForce', treatment: { kind, name, words: `${name}, as the house does it.` } },
];

/** What each method of the tests yields. */
export const METHOD_SERIES = {
  'straight-pull': [UNTREATED],
  'named-knot': treated('knotted', 'knot', 'Palomar'),
  abrasion: treated('abraded', 'abrasion', 'wet bar'),
  diameter: [{ code: 'outline', kind: 'diameterAlongStations', stations: 1 }],
  'linear-density': [{ code: 'mass', kind: 'linearDensity' }],
} satisfies Record<string, [MethodSeries, ...MethodSeries[]]>;

/** Keys by which results are held. */
export const KEYS = {
  force: 'breakingForce/straight-pull/untreated',
  diameter: 'diameter/diameter/outline',
  stress: 'apparentStress/straight-pull/untreated/diameter/outline',
  knot: 'retention/named-knot/knotted',
  abrasion: 'retention/abrasion/abraded',
} as const;
