import { codesOf, FORCES, instrument, pulls } from './check-input.js';

const IDENTICAL = 'readings/identical-beyond-chance';
const DIGITS = 'readings/terminal-digits';

/** Normal draws by Box and Muller on a linear congruential generator (Numerical Recipes' constants, from memory). */
function honestForces(seed: number, n: number, step: number, cvPercent = 3, mean = 36): string[] {
  let state = seed;
  const uniform = () => ((state = (1664525 * state + 1013904223) >>> 0) + 0.5) / 2 ** 32;
  const decimals = Math.max(0, -Math.floor(Math.log10(step)));
  return Array.from({ length: n }, () => {
    const normal = Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
    return (Math.round((mean * (1 + (cvPercent / 100) * normal)) / step) * step).toFixed(decimals);
  });
}
const gauge = (resolutionSi: string) => ({ instruments: [instrument({ resolutionSi })] });
const shareFlagged = (code: string, n: number, step: number, cases = 300) => {
  const unit = 'N';
  const flagged = Array.from({ length: cases }, (_, seed) => honestForces(seed + 1, n, step)).filter((forces) =>
    codesOf({ ...gauge(String(step)), specimens: pulls(forces, { unit }), limits: { maximumCvPercent: 100 } }).includes(code),
  );
  return flagged.length / cases;
};

test('four copies of one pull among eight are told; two equal pulls are not', () => {
  expect(codesOf({ specimens: pulls([...FORCES.slice(0, 4), '36.52', '36.52', '36.52', '37.41']) })).toContain(IDENTICAL);
  expect(codesOf({ specimens: pulls([...FORCES.slice(0, 7), '36.52']) })).not.toContain(IDENTICAL);
});

test('a block of readings copied below itself is told though no two neighbours are equal', () => {
  expect(codesOf({ specimens: pulls([...FORCES.slice(0, 5), ...FORCES.slice(0, 5)]) })).toContain(IDENTICAL);
});

test('readings that are all equal are told: their own spread of nothing excuses nothing', () => {
  expect(codesOf({ specimens: pulls(Array.from({ length: 8 }, () => '36.52')) })).toContain(IDENTICAL);
});

test('on a display coarser than the scatter, equal readings mean nothing', () => {
  const forces = ['36', '36', '37', '36', '37', '36', '36', '37'];
  expect(codesOf({ specimens: pulls(forces, { unit: 'N' }), ...gauge('1') })).not.toContain(IDENTICAL);
});

test('the step of the instrument counts, though a spreadsheet wrote more decimals', () => {
  const forces = ['36.00', '36.20', '36.00', '36.40', '36.20', '36.60', '36.00', '36.80'];
  expect(codesOf({ specimens: pulls(forces, { unit: 'N' }), ...gauge('0.2') })).not.toContain(IDENTICAL);
  expect(codesOf({ specimens: pulls(forces, { unit: 'N' }), ...gauge('0.01') })).toContain(IDENTICAL);
});

test('straight and treated pulls of the same force are no copies of one another', () => {
  const treated = pulls(FORCES, { condition: 'treated', from: 101 });
  expect(codesOf({ method: 'abrasion', specimens: [...pulls(FORCES), ...treated] })).not.toContain(IDENTICAL);
});

test('of honest submissions at most one in a hundred is told, on fine and coarse displays', () => {
  expect(shareFlagged(IDENTICAL, 10, 0.01)).toBeLessThanOrEqual(0.01);
  expect(shareFlagged(IDENTICAL, 30, 0.1)).toBeLessThanOrEqual(0.01);
  expect(shareFlagged(IDENTICAL, 30, 0.5)).toBeLessThanOrEqual(0.01);
});

const EYE = Array.from({ length: 50 }, (_, i) => (35 + ((i * 7) % 50) / 25).toFixed(2).replace(/\d$/, i % 2 ? '0' : '5'));

test('fifty readings that end in 0 and 5 only are told; forty-nine are too few to tell', () => {
  expect(codesOf({ specimens: pulls(EYE) })).toContain(DIGITS);
  expect(codesOf({ specimens: pulls(EYE.slice(0, 49)) })).not.toContain(DIGITS);
});

test('a display with a step of 0.05 shows 0 and 5 only, and that is no preference', () => {
  expect(codesOf({ specimens: pulls(EYE, { unit: 'N' }), ...gauge('0.05') })).not.toContain(DIGITS);
  expect(codesOf({ specimens: pulls(EYE, { unit: 'N' }), ...gauge('0.01') })).toContain(DIGITS);
});

test('a preference among the digits that a step of 0.2 allows is told', () => {
  const forces = honestForces(7, 60, 0.2, 6).map((text) => text.replace(/\d$/, (digit) => (digit === '2' ? '0' : digit)));
  expect(codesOf({ specimens: pulls(honestForces(7, 60, 0.2, 6), { unit: 'N' }), ...gauge('0.2') })).not.toContain(DIGITS);
  expect(codesOf({ specimens: pulls(forces, { unit: 'N' }), ...gauge('0.2') })).toContain(DIGITS);
});

test('zeros that a spreadsheet dropped are put back before the digits are counted', () => {
  const forces = honestForces(3, 400, 0.01).map((text) => String(Number(text)));
  expect(forces.some((text) => text.length < 5)).toBe(true);
  expect(codesOf({ specimens: pulls(forces, { unit: 'N' }), ...gauge('0.01') })).not.toContain(DIGITS);
});

test('readings that scatter by less than five steps have uneven digits by nature', () => {
  const forces = honestForces(5, 80, 0.1, 0.4);
  expect(codesOf({ specimens: pulls(forces, { unit: 'N' }), ...gauge('0.1') })).not.toContain(DIGITS);
});

test('of honest submissions of sixty readings about one in a hundred is told', () => {
  expect(shareFlagged(DIGITS, 60, 0.01)).toBeLessThanOrEqual(0.03);
});
