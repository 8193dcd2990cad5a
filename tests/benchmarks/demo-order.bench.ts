/**
 * What the tables of the demo say of its true order: groups, pairs told apart, and what of that is wrong.
 * npm run bench -- demo-order [edition, 2026]
 */
import { drawSeries } from '../../api/measurement/bench-model/draw-series.js';
import { comparePairs } from '../../api/measurement/ranking/pairs/compare-pairs.js';
import { couldBeFirst } from '../../api/measurement/ranking/pairs/could-be-first.js';
import { placeSets } from '../../api/measurement/ranking/pairs/place-sets.js';
import { productErrors, productTails } from '../../api/measurement/ranking/product-tails.js';
import { shortfallsOf } from '../../api/reckoning/results/eligibility.js';
import { keyOf } from '../../api/reckoning/results/quantity.js';
import type { EditionResults } from '../../api/reckoning/results/results.js';
import { takes } from '../../api/contract/division.js';
import type { SchemeCategory } from '../../api/contract/endpoints/schemes.js';
import { demoDivisions, demoScheme, demoStrandScheme } from '../../prisma/seed/house/scheme.js';
import type { DemoVariant } from '../../prisma/seed/house/variants.js';
import { MAKES } from '../../prisma/seed/model/makes.js';
import { claimedForceN, seasonOf } from '../demo/demo-standings.js';
import { streamOf } from './bench-settings.js';
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

/** A category as its release compares it, exclusions included. */
function row(name: string, { results, fits }: EditionResults, own: readonly DemoVariant[], category: SchemeCategory): string {
  const found = own.flatMap((variant) => {
    const evidence = results.get(variant.slug)?.get(keyOf(category))?.evidence;
    return evidence && shortfallsOf(category, variant.slug, results).length === 0 ? [{ variant, evidence }] : [];
  });
  const truth = found.map(({ variant }) => TRUE[category.code]!(trueLine(demo.seed, variant), claimedForceN(demo.seed, variant)));
  const evidences = found.map((one) => one.evidence);
  const random = streamOf(name);
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
  return said(name, truth, comparison.isAhead, could);
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

const asked = process.argv[2] ?? '2026';
const plan = demo.seasons.find(({ season }) => season.slug === asked);
if (!plan) throw new Error(`demo-order: found ${asked}, expected one of ${demo.seasons.map(({ season }) => season.slug).join(', ')}.`);
const season = seasonOf(demo, plan);
console.log(
  '| division | category | entries | could be first | groups | largest | width | pairs told apart | wrong |\n|---|---|---|---|---|---|---|---|---|',
);
for (const { name, takes: rule, scheme } of demoDivisions) {
  const own = plan.entries.filter(({ line }) => takes(rule, MAKES[line.make]));
  const { categories } = [demoScheme, demoStrandScheme].find(({ slug }) => slug === scheme.slug)!.rules;
  for (const category of categories) console.log(row(`${name} | ${category.name}`, season, own, category));
}
