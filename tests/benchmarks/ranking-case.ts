import { createHash } from 'node:crypto';
import { normalDeviate } from '../../api/measurement/random/normal-deviate.js';
import { randomStream } from '../../api/measurement/random/random-stream.js';
import { seedFromDigest } from '../../api/measurement/random/seed-from-digest.js';
import type { RankingInput } from '../measurement/support/former-ranking/ranking-input.js';

/** An invented edition of any size: five per cent of spread between entries, ten specimens of five per cent each, four rigs of one per cent. */
export function rankingCase(entries: number, categories: number, draws = 10_000): RankingInput {
  const digest = createHash('sha256').update(`${entries} by ${categories}`).digest('hex');
  const random = randomStream(seedFromDigest(digest));
  const codes = Array.from({ length: categories }, (_, c) => `category-${c + 1}`);
  const rigs = Array.from({ length: 4 }, (_, k) => `rig:${k + 1}`);
  return {
    digest,
    draws,
    categories: codes.map((code) => ({ code, direction: 'more', weight: '1', places: 3 })),
    combine: 'sumOfPlaces',
    countPlaces: 'afterExclusions',
    tieBreak: 'none',
    sources: Object.fromEntries(rigs.map((rig) => [rig, { relativeStandardUncertainty: 0.01, degreesOfFreedom: Infinity }])),
    entries: Array.from({ length: entries }, (_, i) => ({
      id: `entry-${String(i + 1).padStart(4, '0')}`,
      isExcluded: false,
      results: Object.fromEntries(
        codes.map((code) => {
          const value = 100 * (1 + 0.05 * normalDeviate(random));
          const rig = rigs[i % rigs.length]!;
          return [
            code,
            {
              value,
              standardUncertainty: (0.05 * value) / Math.sqrt(10),
              degreesOfFreedom: 15,
              shared: [{ source: rig, sensitivity: 1 }],
              without: { [rig]: null },
            },
          ];
        }),
      ),
    })),
  };
}
