/**
 * Do the intervals of the overall places hold where all entries are equal in every category? Invented seasons with a known truth, seeds fixed.
 * npm run bench -- scores [trials] [setting …]
 */
import { createHash } from 'node:crypto';
import { rankByModel } from '../../api/measurement/ranking/rank-by-model.js';
import type { Combination } from '../../api/measurement/ranking/places/overall-scores.js';
import { EQUAL, evidenceOf, fitted, percent, streamOf, withError } from './bench-settings.js';
import { PLAIN, truthOf } from './invented-season.js';
import type { Season } from './invented-season.js';

const CODES = ['a', 'b', 'c'];
const COMBINED: readonly Combination[] = ['sumOfPlaces', 'meanStandardScore'];

/** One edition of three categories, each with rigs, testers and spools of its own: for each way to combine, whether every interval holds all places, and how many could be first. */
function trial(own: Partial<Season>, seed: string): { isHeld: boolean; first: number }[] {
  const season = { ...PLAIN, ...own };
  const random = streamOf(seed);
  const series = Object.fromEntries(CODES.map((code) => [code, fitted(season, truthOf(season, random), random)]));
  const found = CODES.map((code) => [code, evidenceOf(series[code]!, code)] as const);
  const entries = found[0]![1].map((_, i) => ({
    id: String(i).padStart(3, '0'),
    isExcluded: false,
    results: Object.fromEntries(found.map(([code, evidence]) => [code, evidence[i]!])),
  }));
  return COMBINED.map((combine) => {
    const { overall } = rankByModel({
      digest: createHash('sha256').update(seed).digest('hex'),
      categories: CODES.map((code) => ({ code, direction: 'more', weight: '1', places: 6 })),
      combine,
      countPlaces: 'afterExclusions',
      tieBreak: 'none',
      series,
      entries,
    });
    if (overall.kind !== 'placed') throw new Error('An edition has no places, expected a fit of each category.');
    return {
      isHeld: overall.rows.every(({ low, high }) => low === 1 && high === entries.length),
      first: overall.rows.filter(({ couldBeFirst }) => couldBeFirst).length,
    };
  });
}

const [asked = '200', ...only] = process.argv.slice(2);
const trials = Number(asked);
console.log(
  `${trials} trials a row\n\n| setting | combined by | joint coverage, % | could be first | holds each as first, % |\n|---|---|---|---|---|`,
);
for (const [name, own] of Object.entries(EQUAL)) {
  if (only.length > 0 ? !only.includes(name) : name.includes('seasons before')) continue;
  const rows = Array.from({ length: trials }, (_, t) => trial(own, `scores ${name} ${t}`));
  COMBINED.forEach((combine, at) => {
    const [held, first] = [rows.filter((row) => row[at]!.isHeld).length, rows.reduce((sum, row) => sum + row[at]!.first, 0)];
    const entries = (own.entries ?? PLAIN.entries) * trials;
    console.log(
      `| ${name} | ${combine} | ${withError(held / trials, trials)} | ${(first / trials).toFixed(1)} | ${percent(first / entries)} |`,
    );
  });
}
