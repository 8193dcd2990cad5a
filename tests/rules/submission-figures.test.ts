import { apparentStressMPa } from '../measurement/support/formulas/stress-and-tenacity.js';
import { convert } from '../../api/measurement/units/convert.js';
import type { ReadingInSi, SpecimenInSi } from '../../api/readings/readings-si.js';
import { toSpecimensInSi } from '../../api/readings/readings-si.js';
import { specimenContent } from '../../api/contract/submission-content.js';
import { computeSubmissionFigures } from '../../api/readings/submission-figures.js';

// Expected values are worked out by hand from the formulae of the method pages; t(0.975; 2) = 4.303 (NIST/SEMATECH e-Handbook, table 1.3.6.7.2).
const reading = (role: ReadingInSi['role'], valueSi: string, station: number | null = null): ReadingInSi => ({
  role,
  station,
  enteredText: valueSi,
  enteredUnit: '',
  valueSi,
  siUnit: '',
});
const specimen = (number: number, readings: ReadingInSi[], change: Partial<SpecimenInSi> = {}): SpecimenInSi => ({
  number,
  condition: 'untreated',
  state: 'valid',
  reason: null,
  readings,
  ...change,
});
const pull = (number: number, forceN: number, change: Partial<SpecimenInSi> = {}) =>
  specimen(number, [reading('breakingForce', String(forceN))], change);
const figuresOf = (specimens: SpecimenInSi[], rule: 'circle' | 'ellipse' | 'solid' | null = null) =>
  computeSubmissionFigures(specimens, rule, 0.97);

test('a straight pull: mean, spread and interval', () => {
  const { breakingForceN, treatedForceN, retentionPercent, diameterMm, areaMm2 } = figuresOf([pull(1, 10), pull(2, 11), pull(3, 12)]);
  expect(breakingForceN).toMatchObject({ n: 3, mean: 11, sd: 1, min: 10, max: 12, median: 11 });
  expect(breakingForceN!.cvPercent).toBeCloseTo(9.0909, 4);
  expect(breakingForceN!.low95).toBeCloseTo(11 - 4.3027 / Math.sqrt(3), 4);
  expect(breakingForceN!.high95).toBeCloseTo(11 + 4.3027 / Math.sqrt(3), 4);
  expect([treatedForceN, retentionPercent, diameterMm, areaMm2]).toEqual([null, null, null, null]);
});

test('only valid specimens count; invalid and set aside ones are counted as such', () => {
  const { breakingForceN, validSpecimens, invalidSpecimens, gripBreakSharePercent } = figuresOf([
    pull(1, 10),
    pull(2, 12),
    pull(3, 99, { state: 'invalid', reason: 'brokeAtGrip' }),
    pull(4, 99, { state: 'setAside', reason: 'The knot was not the one named.' }),
  ]);
  expect(breakingForceN).toMatchObject({ n: 2, mean: 11, max: 12 });
  expect({ validSpecimens, invalidSpecimens, gripBreakSharePercent }).toEqual({
    validSpecimens: 2,
    invalidSpecimens: 1,
    gripBreakSharePercent: 25,
  });
});

test('a single pull has a mean and no interval', () => {
  expect(figuresOf([pull(1, 10)]).breakingForceN).toMatchObject({ n: 1, mean: 10, sd: null, low95: null, high95: null });
});

test('no valid specimen, no figure', () => {
  expect(figuresOf([pull(1, 10, { state: 'invalid', reason: 'slipped' })]).breakingForceN).toBeNull();
});

test('retention is of the means of treated and straight pulls, its interval around it', () => {
  const treated = [8, 9, 10].map((force, i) => pull(11 + i, force, { condition: 'treated' }));
  const { breakingForceN, treatedForceN, retentionPercent } = figuresOf([pull(1, 10), pull(2, 11), pull(3, 12), ...treated]);
  expect([breakingForceN!.mean, treatedForceN!.mean]).toEqual([11, 9]);
  expect(retentionPercent!.value).toBeCloseTo(81.818, 3);
  expect(retentionPercent!.low95!).toBeLessThan(81.818);
  expect(retentionPercent!.high95!).toBeGreaterThan(81.818);
});

test('retention needs two pulls of each condition', () => {
  expect(figuresOf([pull(1, 10), pull(2, 11), pull(3, 9, { condition: 'treated' })]).retentionPercent).toBeNull();
});

const GAUGED = [
  specimen(1, [reading('wideDiameter', '0.00026', 1), reading('narrowDiameter', '0.00025', 1)]),
  specimen(2, [reading('wideDiameter', '0.00028', 1), reading('narrowDiameter', '0.00025', 1)]),
];

test('diameter, out-of-roundness and cross-section come from the stations', () => {
  const circle = figuresOf(GAUGED, 'circle');
  expect(circle.diameterMm).toMatchObject({ n: 2, mean: expect.closeTo(0.26, 9) });
  // (100 · 0.01/0.255 + 100 · 0.03/0.265)/2
  expect(circle.outOfRoundnessPercent!.mean).toBeCloseTo(7.6212, 4);
  expect(circle.areaMm2).toBeCloseTo((Math.PI * 0.26 ** 2) / 4, 9);
  // π/4 · (0.26 · 0.25 + 0.28 · 0.25)/2
  expect(figuresOf(GAUGED, 'ellipse').areaMm2).toBeCloseTo((Math.PI / 4) * 0.0675, 9);
  expect(figuresOf(GAUGED).areaMm2).toBeNull();
});

test('widest and narrowest are paired by their station, in whatever order they stand', () => {
  const mixed = specimen(1, [
    reading('narrowDiameter', '0.00020', 2),
    reading('wideDiameter', '0.00030', 1),
    reading('wideDiameter', '0.00022', 2),
    reading('narrowDiameter', '0.00028', 1),
  ]);
  // Stations of 0.29 mm and 0.21 mm
  expect(figuresOf([mixed]).diameterMm!.mean).toBeCloseTo(0.25, 9);
});

test('linear density is mass over length; the solid cross-section is that over the density', () => {
  const { linearDensityTex, areaMm2 } = figuresOf([specimen(1, [reading('mass', '0.0002217'), reading('length', '10')])], 'solid');
  expect(linearDensityTex!.mean).toBeCloseTo(22.17, 9);
  // 22.17 g/km over 0.97 g/cm³
  expect(areaMm2).toBeCloseTo(0.022856, 6);
  expect(figuresOf([specimen(1, [reading('mass', '0.0002217')])], 'solid')).toMatchObject({ linearDensityTex: null, areaMm2: null });
});

// Common practice: 36.52 lbf over a circle of 0.256 mm are 457 750 psi.
test('force and diameter as entered give the stress that the trade works out by hand', () => {
  const entered = (value: string, unit: string, role: string) => ({ role, station: role === 'breakingForce' ? null : 1, value, unit });
  const specimens = toSpecimensInSi(
    [
      { number: 1, readings: [entered('36.52', 'lbf', 'breakingForce')] },
      { number: 2, readings: [entered('0.256', 'mm', 'wideDiameter'), entered('0.256', 'mm', 'narrowDiameter')] },
    ].map((one) => specimenContent.parse(one)),
  );
  const { breakingForceN, areaMm2 } = figuresOf(specimens, 'circle');
  const stressPsi = Number(convert(apparentStressMPa(breakingForceN!.mean, areaMm2!) * 1e6, 'psi'));
  expect(Math.abs(stressPsi - 457_750)).toBeLessThanOrEqual(5);
});

test('diameters and weighings that are invalid or set aside do not count either', () => {
  const wrong = [
    reading('wideDiameter', '0.0009', 1),
    reading('narrowDiameter', '0.0008', 1),
    reading('mass', '9'),
    reading('length', '1'),
  ];
  const weighed = specimen(3, [reading('mass', '0.0002217'), reading('length', '10')]);
  const counted = figuresOf([...GAUGED, weighed], 'ellipse');
  const withWrong = figuresOf(
    [
      ...GAUGED,
      weighed,
      specimen(4, wrong, { state: 'invalid', reason: 'handlingDamage' }),
      specimen(5, wrong, { state: 'setAside', reason: 'Another line.' }),
    ],
    'ellipse',
  );
  expect(withWrong).toEqual({ ...counted, invalidSpecimens: 1 });
});
