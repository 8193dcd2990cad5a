import { readFileSync } from 'node:fs';
import { mandelPaule } from '../../../api/measurement/consensus/mandel-paule.js';

interface Case {
  id: string;
  source: string;
  inputs: { means?: number[]; variances_of_means?: number[]; sd?: number[]; n?: number | number[] };
  expected: { mandel_paule?: { mean: number; tau2: number; se: number } };
}

const cases = (JSON.parse(readFileSync('tests/measurement/fixtures/robust.json', 'utf8')) as Case[]).filter(
  ({ inputs, expected }) => expected.mandel_paule && inputs.means,
);

function standardUncertainties({ variances_of_means, sd, n }: Case['inputs']): number[] {
  if (variances_of_means) return variances_of_means.map(Math.sqrt);
  return (sd ?? []).map((s, i) => s / Math.sqrt(Array.isArray(n) ? n[i]! : (n ?? 1)));
}

test.each(cases.map((entry) => [`${entry.id}: ${entry.source}`, entry] as const))('%s', (_, { inputs, expected }) => {
  const u = standardUncertainties(inputs);
  const { mean, betweenVariance, standardError } = mandelPaule(
    inputs.means!.map((value, i) => ({ mean: value, standardUncertainty: u[i]! })),
  );
  expect(mean / expected.mandel_paule!.mean).toBeCloseTo(1, 5);
  expect(betweenVariance / expected.mandel_paule!.tau2).toBeCloseTo(1, 4);
  expect(standardError / expected.mandel_paule!.se).toBeCloseTo(1, 4);
});

test('there are published cases to hold it against', () => {
  expect(cases.length).toBeGreaterThanOrEqual(3);
});

test('means that agree have no variance between them', () => {
  const { mean, betweenVariance, standardError } = mandelPaule([1, 1, 1].map(() => ({ mean: 5, standardUncertainty: 3 })));
  expect(mean).toBeCloseTo(5, 12);
  expect(betweenVariance).toBe(0);
  expect(standardError).toBeCloseTo(Math.sqrt(3), 12);
});

test('one mean, or a mean without uncertainty, is refused', () => {
  expect(() => mandelPaule([{ mean: 1, standardUncertainty: 1 }])).toThrow('expected at least 2');
  expect(() => mandelPaule([1, 2].map((mean) => ({ mean, standardUncertainty: 0 })))).toThrow('expected above 0');
});
