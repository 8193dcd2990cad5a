import { createHash } from 'node:crypto';
import { fitSeries } from '../../api/measurement/bench-model/fit-series.js';
import { randomStream } from '../../api/measurement/random/random-stream.js';
import { seedFromDigest } from '../../api/measurement/random/seed-from-digest.js';
import type { ModelRanking } from '../../api/measurement/ranking/model-ranking.js';
import { rankByModel } from '../../api/measurement/ranking/rank-by-model.js';
import { measureSeason, PLAIN, truthOf } from './invented-season.js';

/** Fits and ranks an invented edition of any size: a series a category, entries five per cent apart, two submissions of eight specimens each on 3 rigs and 5 testers of one per cent. */
export function rankInvented(entries: number, categories: number, draws: number): ModelRanking {
  const digest = createHash('sha256').update(`${entries} by ${categories}`).digest('hex');
  const random = randomStream(seedFromDigest(digest));
  const season = { ...PLAIN, entries, spread: 0.05, rigSd: 0.01, testerSd: 0.01 };
  const codes = Array.from({ length: categories }, (_, c) => `category-${c + 1}`);
  const series = Object.fromEntries(codes.map((code) => [code, fitSeries(measureSeason(season, truthOf(season, random), random))]));
  const [first] = Object.values(series);
  return rankByModel({
    digest,
    draws,
    categories: codes.map((code) => ({ code, direction: 'more', weight: '1', places: 3 })),
    combine: 'sumOfPlaces',
    countPlaces: 'afterExclusions',
    tieBreak: 'none',
    series,
    entries: (first?.kind === 'fitted' ? first.design.variants : []).map((variant, i) => ({
      id: variant,
      isExcluded: false,
      results: Object.fromEntries(
        codes.map((code) => [code, { value: series[code]!.values[i]!, factors: [{ series: code, variant, power: 1 }], without: {} }]),
      ),
    })),
  });
}
