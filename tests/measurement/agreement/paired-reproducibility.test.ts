import { pairedReproducibility } from '../../../api/measurement/agreement/paired-reproducibility.js';

const code = (call: () => unknown): string => {
  try {
    call();
  } catch (error) {
    return (error as { code: string }).code;
  }
  return 'nothing thrown';
};

test('pairs that differ by a known scatter give it again', () => {
  // Differences of two results with standard deviation s have √2·s: here all of them are ln 1.02, so s = ln(1.02)/√2 (analytic).
  const equal = Array.from({ length: 6 }, (_, i): [number, number] => (i % 2 === 0 ? [50, 51] : [51, 50]));
  expect(pairedReproducibility(equal).relativeSd).toBeCloseTo(Math.log(1.02) / Math.SQRT2, 12);
});

test('the 95 % interval is that of a standard deviation with a degree of freedom a pair', () => {
  const { relativeSd, low95, high95, pairs } = pairedReproducibility(Array.from({ length: 10 }, (): [number, number] => [100, 103]));
  // χ² with 10 degrees of freedom: 3.247 and 20.483 (NIST/SEMATECH e-Handbook, table 1.3.6.7.4).
  expect(pairs).toBe(10);
  expect(low95 / relativeSd).toBeCloseTo(Math.sqrt(10 / 20.483), 4);
  expect(high95 / relativeSd).toBeCloseTo(Math.sqrt(10 / 3.247), 4);
});

test('no pair, and what is not above zero, are refused', () => {
  expect(code(() => pairedReproducibility([]))).toBe('measurement/too-few-readings');
  expect(code(() => pairedReproducibility([[0, 1]]))).toBe('figures/not-positive');
  expect(code(() => pairedReproducibility([[1, Number.NaN]]))).toBe('figures/not-positive');
});
