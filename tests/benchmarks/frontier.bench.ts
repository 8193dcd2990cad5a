/**
 * How narrow may a table be that keeps its joint coverage whatever spools differ by? A bound for every rule that stretches its comparisons
 * by what the two submissions of each entry show; rigs and testers are known, which only narrows it.
 * npm run bench -- frontier [trials, 300]
 */
import { chiSquareCdf } from '../../api/measurement/distributions/chi-square-distribution.js';
import { normalCdf } from '../../api/measurement/distributions/normal-distribution.js';
import { fitted, knowing, RIGS_AND_TESTERS, streamOf, tablesOf } from './bench-settings.js';
import { PLAIN, truthOf } from './invented-season.js';
import type { Season } from './invented-season.js';

/** What spools may differ by [1]. */
const SPREADS = [0, 0.004, 0.007, 0.01, 0.014, 0.02];
const LEVELS = [0.93, 0.935, 0.94, 0.95];
const STRETCHES = [0.3, 0.5, 0.65, 0.8, 0.9, 1, 1.05, 1.1, 1.2, 1.35, 1.6, 2, 2.6, 3.4];
/** Sixty submissions less thirty values, two rigs and four testers. */
const DEGREES = 24;
const REPEATABILITY = PLAIN.cv ** 2 / 8;
/** As many cells of what a season shows, and of what a rule may answer. */
const CELLS = 120;
const ROUNDS = 3000;

const variance = (sd: number): number => (sd ** 2 + REPEATABILITY) / REPEATABILITY;
const fine = Array.from({ length: CELLS }, (_, at) => 0.5 + (2.9 * at) / (CELLS - 1));
const edges = [...Array.from({ length: CELLS }, (_, at) => (6 * at) / CELLS), 100];
const ranges = Array.from({ length: 1601 }, (_, at) => rangeCdf(at / 100));
const rangeAt = (range: number): number => ranges[Math.min(1600, Math.round(100 * range))]!;
const usual = ranges.findIndex((chance) => chance >= 0.95) / 100;

/** Chance that thirty normal values lie within a range. */
function rangeCdf(range: number): number {
  const step = 0.02;
  let sum = 0;
  for (let z = -8; z < 8; z += step) sum += step * Math.exp((-z * z) / 2) * (normalCdf(z + range) - normalCdf(z)) ** (PLAIN.entries - 1);
  return (PLAIN.entries / Math.sqrt(2 * Math.PI)) * sum;
}

/** Chance of each cell of the variance that a season shows, beside that of the specimens alone. */
const shown = (sd: number): number[] => {
  const below = edges.map((edge) => chiSquareCdf((edge * DEGREES) / variance(sd), DEGREES));
  return below.slice(1).map((chance, at) => chance - below[at]!);
};

/** Mean width by one who knows the spreads, were uncertainties so many times as large. */
function widths(name: string, own: Partial<Season>, trials: number): number[] {
  const sums = STRETCHES.map(() => 0);
  for (let t = 0; t < trials; t++) {
    const season = { ...PLAIN, spread: 0.05, ...own };
    const random = streamOf(`${name} ${t}`);
    const known = knowing(fitted(season, truthOf(season, random), random), season);
    STRETCHES.forEach((stretch, at) => (sums[at]! += tablesOf(known, random, stretch).width / trials));
  }
  return sums;
}

function between(all: readonly number[], stretch: number): number {
  const at = Math.min(
    STRETCHES.length - 1,
    Math.max(
      1,
      STRETCHES.findIndex((one) => one >= stretch),
    ),
  );
  const [low, high] = [STRETCHES[at - 1]!, STRETCHES[at]!];
  return all[at - 1]! + ((stretch - low) / (high - low)) * (all[at]! - all[at - 1]!);
}

/** Least mean width at a spread with that coverage at all: weak duality, so that no rule of the kind is narrower (Boyd and Vandenberghe 2004, 5.2). */
function leastWidth(measured: readonly number[], sd: number, level: number): number {
  const own = shown(sd);
  const others = SPREADS.map(shown);
  const width = fine.map((stretch) => between(measured, stretch / Math.sqrt(variance(sd))));
  const missed = SPREADS.map((one) => fine.map((stretch) => 1 - rangeAt((usual * stretch) / Math.sqrt(variance(one)))));
  const price = SPREADS.map(() => 20);
  let best = 0;
  for (let round = 0; round < ROUNDS; round++) {
    const over = SPREADS.map(() => level - 1);
    let dual = price.reduce((sum, one) => sum + one * (level - 1), 0);
    own.forEach((chance, cell) => {
      let [least, answer] = [Infinity, 0];
      width.forEach((one, at) => {
        const cost = price.reduce((sum, each, s) => sum + each * others[s]![cell]! * missed[s]![at]!, chance * one);
        if (cost < least) [least, answer] = [cost, at];
      });
      dual += least;
      over.forEach((one, s) => (over[s] = one + others[s]![cell]! * missed[s]![answer]!));
    });
    best = Math.max(best, dual);
    over.forEach((one, s) => (price[s] = Math.max(0, price[s]! + (600 / (1 + round / 50)) * one)));
  }
  return best;
}

const trials = Number(process.argv[2] ?? 300);
const rigs = widths('differ: rig 1 % + tester 1 %', RIGS_AND_TESTERS, trials);
const spools = widths('differ: spool/day 1.4 %', { submissionSd: 0.014 }, trials);
console.log(`${trials} trials\n\n| joint coverage kept, % | rig 1 % + tester 1 % | spool/day 1.4 % |\n|---|---|---|`);
for (const level of LEVELS)
  console.log(`| ${100 * level} | ${leastWidth(rigs, 0, level).toFixed(1)} | ${leastWidth(spools, 0.014, level).toFixed(1)} |`);
