/**
 * What the tables of the demo say of its true order: groups, pairs told apart, and what of that is wrong.
 * npm run bench -- demo-order <address of a house with the demo> [edition, 2026]
 */
import { drawSeries } from '../../api/measurement/bench-model/draw-series.js';
import { randomStream } from '../../api/measurement/random/random-stream.js';
import { seedFromDigest } from '../../api/measurement/random/seed-from-digest.js';
import { comparePairs } from '../../api/measurement/ranking/compare-pairs.js';
import { couldBeFirst } from '../../api/measurement/ranking/could-be-first.js';
import { placeSets } from '../../api/measurement/ranking/place-sets.js';
import { productErrors, productTails } from '../../api/measurement/ranking/product-tails.js';
import type { Bundle } from '../../api/reckoning/documents/bundle.js';
import { compare } from '../../api/reckoning/documents/compare.js';
import { contextOf } from '../../api/reckoning/documents/release-context.js';
import type { ReleaseContext } from '../../api/reckoning/documents/release-context.js';
import { shortfallsOf } from '../../api/reckoning/results/eligibility.js';
import { keyOf } from '../../api/reckoning/results/quantity.js';
import { inventDemo } from '../../prisma/seed/demo.js';
import { trueLine } from '../../prisma/seed/model/true-line.js';
import type { TrueLine } from '../../prisma/seed/model/true-line.js';

const DRAWS = 10_000;
const LEVEL = 0.95;
const demo = inventDemo();

const TRUE: Readonly<Record<string, (line: TrueLine, claimedN: number) => number>> = {
  'apparent-stress': ({ breakingForceN, diameterMm }) => breakingForceN / diameterMm ** 2,
  'abrasion-retention': ({ abrasionRetention }) => abrasionRetention,
  'palomar-retention': ({ palomarRetention }) => palomarRetention,
  'fg-retention': ({ fgRetention }) => fgRetention,
  'strength-honesty': ({ breakingForceN }, claimedN) => breakingForceN / claimedN,
};

type Category = ReleaseContext['evidence']['edition']['scheme']['rules']['categories'][number];

/** A category as its release compares it, exclusions included. */
function row({ computed: { results, fits }, evidence, division }: ReleaseContext, category: Category): string {
  const found = [...results].flatMap(([variant, own]) => {
    const result = own.get(keyOf(category));
    return result?.evidence && shortfallsOf(category, variant, results).length === 0 ? [{ variant, evidence: result.evidence }] : [];
  });
  const claimed = new Map(evidence.claims.map(({ variant, quantity, valueSi }) => [`${quantity} ${variant}`, Number(valueSi)]));
  const truth = found.map(({ variant }) => {
    const line = trueLine(
      demo.seed,
      demo.variants.find(({ slug }) => slug === variant)!,
    );
    return TRUE[category.code]!(line, claimed.get(`breakingForce ${variant}`) ?? NaN);
  });
  const evidences = found.map((one) => one.evidence);
  const random = randomStream(seedFromDigest('0'.repeat(64)));
  const drawn = new Map(
    Object.entries(fits).flatMap(([key, fit]) => (fit.kind === 'fitted' ? [[key, Float32Array.from(drawSeries(fit, DRAWS, random))]] : [])),
  );
  const tails = productTails(evidences, fits);
  const table = {
    goodness: Float64Array.from(evidences, ({ value }) => Math.log(value)),
    errors: productErrors(evidences, fits, drawn, DRAWS),
    differenceUncertainty: tails.standardUncertainty,
    degreesOfFreedom: tails.degreesOfFreedom,
  };
  const comparison = comparePairs(table, LEVEL);
  const could = couldBeFirst(table, comparison, LEVEL);
  return said(`${division?.slug ?? ''} | ${category.name}`, truth, comparison.isAhead, could);
}

function said(name: string, truth: readonly number[], isAhead: Uint8Array, could: Uint8Array): string {
  const n = truth.length;
  const placeOf = (i: number): number => 1 + truth.filter((one) => one > truth[i]!).length;
  const sets = placeSets(
    isAhead,
    truth.map((_, i) => placeOf(i)),
  );
  const groups = [...Map.groupBy(sets, ({ group }) => group).values()].map(({ length }) => length);
  const told = isAhead.reduce((sum, one) => sum + one, 0);
  const wrong = isAhead.filter((one, at) => one === 1 && truth[Math.floor(at / n)]! <= truth[at % n]!).length;
  const best = truth.indexOf(Math.max(...truth));
  const width = n - (2 * told) / n;
  const first = could.reduce((sum, one) => sum + one, 0);
  return `| ${name} | ${n} | ${first}${could[best] === 1 ? '' : ', without the best'} | ${groups.length} | ${Math.max(...groups)} | ${width.toFixed(1)} | ${told} of ${(n * (n - 1)) / 2} | ${wrong} |`;
}

const [address, edition = '2026'] = process.argv.slice(2);
if (address === undefined)
  throw new Error('demo-order: found no address, expected that of a house with the demo. Start it with npm start.');
const answer = await fetch(`${address}/v1/releases/${edition}/1/bundle.json`);
if (!answer.ok) throw new Error(`demo-order: ${address} answered ${answer.status}. Wait until the demo has published ${edition}.`);
const { inputs } = (await answer.json()) as Bundle;
console.log(
  '| division | category | entries | could be first | groups | largest | width | pairs told apart | wrong |\n|---|---|---|---|---|---|---|---|---|',
);
for (const division of compare(contextOf(inputs)))
  for (const category of division.evidence.edition.scheme.rules.categories) console.log(row(division, category));
