import { readFileSync } from 'node:fs';
import { designOf } from '../../../api/measurement/bench-model/design.js';
import { fitAt } from '../../../api/measurement/bench-model/fit-series.js';
import { submission } from './bench-model-fixtures.js';

test('the example of how submissions combine, as readers see it, is what the model makes of its numbers', () => {
  const page = readFileSync('site/src/components/how-combined.astro', 'utf8');
  const example = page.slice(page.indexOf('combining-example'));
  const [first, high, firstOut, second, low, secondOut, u1, u2, sigma, w1, w2, value] = (example.match(/\d+(\.\d+)?/g) ?? []).map(Number);
  expect((first! / (1 + high! / 100)).toFixed(2)).toBe(firstOut!.toFixed(2));
  expect((second! / (1 - low! / 100)).toFixed(2)).toBe(secondOut!.toFixed(2));
  expect([8, 5].map((n) => (3 / Math.sqrt(n)).toFixed(2))).toEqual([u1!.toFixed(2), u2!.toFixed(2)]);
  const known = (mean: number, n: number, tester: string) => submission('a', mean, null, tester, { relativeVariance: 0.03 ** 2 / n });
  const design = designOf({ submissions: [known(firstOut!, 8, 'T1'), known(secondOut!, 5, 'T2')] });
  const fit = fitAt(design, [{ rig: 0, tester: 0, submission: sigma! / 100 }], new Uint8Array(1));
  expect(fit.values[0]!.toFixed(2)).toBe(value!.toFixed(2));
  expect([...fit.atoms[0]!.level.shares].map((share) => share.toFixed(2))).toEqual([w1!.toFixed(2), w2!.toFixed(2)]);
});
