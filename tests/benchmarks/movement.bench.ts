/**
 * Is at most one in twenty of the changes named noise, and are changes of five per cent found? Invented pairs of seasons with a known truth, seeds fixed.
 * npm run bench -- movement [trials]
 */
import { besideTable } from '../../api/measurement/ranking/beside-table.js';
import { valueChanges } from '../../api/measurement/ranking/movement/value-changes.js';
import { EQUAL, evidenceOf, fitted, percent, streamOf, withError } from './bench-settings.js';
import { PLAIN, truthOf } from './invented-season.js';

const MOVED = ['rig 1 % + tester 1 %', 'one rig +2 %', 'one tester +2 %', 'all rig 1.4 %', 'all tester 1.4 %', 'no effects'];

/** Two seasons of the same lines with rigs and testers of their own: once five of thirty changed by five per cent, once none. */
function row(name: string, trials: number): void {
  const season = { ...PLAIN, ...EQUAL[name], spread: 0.05 };
  const sums = { noise: 0, squares: 0, power: 0, falseAlone: 0 };
  const changed = Math.round(season.entries / 6);
  for (let t = 0; t < trials; t++) {
    const random = streamOf(`moved ${name} ${t}`);
    const truth = truthOf(season, random);
    const moved = truth.map((value, i) => (i < changed ? value * (i % 2 === 0 ? 1.05 : 1 / 1.05) : value));
    const [before, now, still] = [truth, moved, truth].map((values) => {
      const fit = fitted(season, values, random);
      const tails = besideTable(evidenceOf(fit), { force: fit });
      return new Map(fit.design.variants.map((variant, v) => [variant, { value: fit.values[v]!, ...tails[v]! }]));
    });
    const named = valueChanges(now!, before!).flatMap(({ isChange }, i) => (isChange ? [i] : []));
    const right = named.filter((i) => i < changed).length;
    const noise = named.length === 0 ? 0 : (named.length - right) / named.length;
    sums.noise += noise;
    sums.squares += noise * noise;
    sums.power += right / changed;
    sums.falseAlone += Number(valueChanges(still!, before!).some(({ isChange }) => isChange));
  }
  const noise = sums.noise / trials;
  const error = Math.sqrt(Math.max(0, sums.squares / trials - noise * noise) / trials);
  console.log(
    `| ${name} | ${percent(noise)} ± ${percent(error)} | ${percent(sums.power / trials)} | ${withError(sums.falseAlone / trials, trials)} |`,
  );
}

const trials = Number(process.argv[2] ?? '600');
console.log(`${trials} trials a row; 30 entries, five of them changed by 5 %\n`);
console.log('| setting | noise among those named, % | power, % | any named where none changed, % |\n|---|---|---|---|');
for (const name of MOVED) row(name, trials);
