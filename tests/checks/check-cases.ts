import { METHOD_SERIES } from '../support/method-series.js';
import { balance, diameters, FORCES, instrument, lengthMeasure, micrometer, pulls } from './check-input.js';
import type { Case } from './check-input.js';

export const knot = (straight: readonly string[], treated: readonly string[]): Partial<Case> => ({
  method: 'named-knot',
  specimens: [...pulls(straight), ...pulls(treated, { condition: 'treated', from: 101 })],
});
const broken = (count: number) =>
  pulls(FORCES).map((specimen, i) => (i < count ? { ...specimen, validity: 'invalid', invalidReason: 'brokeAtGrip' } : specimen));
const invalid = (count: number) =>
  pulls(FORCES).map((specimen, i) => (i < count ? { ...specimen, validity: 'invalid', invalidReason: 'slipped' } : specimen));
const timed = (time: string) => pulls(FORCES, { times: [time, '18', '19', '18', '18', '17', '18', '18'] });
export const WEAKER = ['20.12', '21.40', '20.77', '20.31', '21.02', '20.58', '19.86', '20.93'];
const STRONGER = ['46.12', '47.40', '46.77', '46.31', '47.02', '46.58', '45.86', '46.93'];
const [OUTLINE] = METHOD_SERIES.diameter;
export const STATIONS = [0, 3, 5, 2, 4].map((off) => [
  [`0.26${off}`, `0.25${off}`] as const,
  [`0.26${off + 1}`, `0.25${off + 1}`] as const,
]);
export const WEIGHED = ['0.2217', '0.2221', '0.2209', '0.2215', '0.2224'].map((value, i) => ({
  number: i + 1,
  readings: [
    { role: 'mass', value, unit: 'g' },
    { role: 'length', value: '10', unit: 'm' },
  ],
}));
const MEAN_N = (36.62375 * 4.4482216152605).toFixed(6);
/** Claims of the breaking force for which measured over claimed is the ratio. */
const claimedAt = (ratio: number): Partial<Case> => ({ claims: [{ quantity: 'breakingForce', valueSi: String(Number(MEAN_N) / ratio) }] });
const calibratedUntil = (validUntil: string): Partial<Case> => ({
  instruments: [instrument({ calibrations: [{ certificate: 'C-1', validFrom: '2025-06-01', validUntil }] })],
});

/** A label of which 0.78 is measured, read 2.2046 times too low: alone it tells of no slip. */
const slipped = (sameDayRatios: readonly number[]): Partial<Case> => ({ ...claimedAt(0.78 / 2.2046), input: { sameDayRatios } });

type RigEvidence = NonNullable<Case['input']['rigEvidence']>;
const onRig = (rigEvidence: RigEvidence): Partial<Case> => ({ input: { rigEvidence, rigPulls: 2 } });
const onMicrometer = (rigEvidence: RigEvidence): Partial<Case> => ({
  specimens: diameters(STATIONS),
  method: 'diameter',
  instruments: [micrometer, lengthMeasure],
  input: { rigEvidence, rigPulls: 0 },
});

/** Each check: what triggers it, and a near miss. */
export const CASES: readonly (readonly [code: string, what: string, trigger: Partial<Case>, nearMiss: Partial<Case>])[] = [
  ['specimens/too-few-valid', 'four valid where five are needed', { specimens: invalid(4) }, { specimens: invalid(3) }],
  ['specimens/too-few-valid', 'four treated beside eight straight', knot(FORCES, WEAKER.slice(0, 4)), knot(FORCES, WEAKER.slice(0, 5))],
  [
    'figures/unit-slip',
    'three lines of a day, each off its label by its own part',
    slipped([1.05 / 2.2046, 0.9 / 2.2046]),
    slipped([1.05, 0.9 / 2.2046]),
  ],
  ['figures/unit-slip', 'two others of the day, not one', slipped([1.05 / 2.2046, 0.9 / 2.2046]), slipped([1.05 / 2.2046])],
  [
    'figures/unlike-own-days',
    'the same spool at 9.2 N another day',
    { input: { ownForcesN: [162, 162.9 / 9.80665] } },
    { input: { ownForcesN: [162, 140, 100] } },
  ],
  [
    'figures/implausible-stress',
    'forces of a line ten times as thick',
    { input: { ownDiameterMm: 2.5 } },
    { input: { ownDiameterMm: 0.5 } },
  ],
  ['figures/implausible-stress', 'more than any fibre', { input: { ownDiameterMm: 0.2 } }, { input: { ownDiameterMm: 0.22 } }],
  ['tester/many-hand-ins', 'the fourth time', { input: { handIns: 4 } }, { input: { handIns: 3 } }],
  [
    'specimens/fewer-explained',
    'four valid, and why',
    { specimens: invalid(4), fewerBecause: 'The grip slipped.' },
    { specimens: invalid(3), fewerBecause: 'The grip slipped.' },
  ],
  [
    'specimens/fewer-explained',
    'four valid, and why or not',
    { specimens: invalid(4), fewerBecause: 'The grip slipped.' },
    { specimens: invalid(4) },
  ],
  [
    'specimens/too-few-valid',
    'four valid, not said why',
    { specimens: invalid(4) },
    { specimens: invalid(4), fewerBecause: 'The grip slipped.' },
  ],
  [
    'readings/missing-for-method',
    'none valid, not said why',
    { specimens: invalid(8) },
    { specimens: invalid(8), fewerBecause: 'The grip slipped.' },
  ],
  ['date/in-the-future', 'tomorrow', { benchDay: '2026-01-19' }, { benchDay: '2026-01-18' }],
  ['method/not-active-on-bench-day', 'the day before it is in force', { effectiveFrom: '2026-01-18' }, { effectiveFrom: '2026-01-17' }],
  ['method/not-active-on-bench-day', 'the day after its last', { effectiveUntil: '2026-01-16' }, { effectiveUntil: '2026-01-17' }],
  ['calibration/missing', 'no certificate', { instruments: [instrument({ calibrations: [] })] }, {}],
  ['calibration/expired-on-bench-day', 'expired the day before', calibratedUntil('2026-01-16'), calibratedUntil('2026-01-17')],
  [
    'calibration/expired-on-bench-day',
    'valid from the day after',
    { instruments: [instrument({ calibrations: [{ certificate: 'C-1', validFrom: '2026-01-18', validUntil: '2027-01-17' }] })] },
    { instruments: [instrument({ calibrations: [{ certificate: 'C-1', validFrom: '2026-01-17', validUntil: '2027-01-16' }] })] },
  ],
  [
    'instruments/none-for-reading',
    'forces and only a micrometer',
    { instruments: [micrometer] },
    { instruments: [micrometer, instrument({ kind: 'forceGauge' })] },
  ],
  [
    'instruments/none-for-reading',
    'a length by nothing',
    { method: 'linear-density', specimens: WEIGHED, instruments: [balance] },
    { method: 'linear-density', specimens: WEIGHED, instruments: [balance, lengthMeasure] },
  ],
  // 37.41 lbf = 166.408 N
  [
    'readings/beyond-capacity',
    'just above',
    { instruments: [instrument({ capacitySi: '166.4' })] },
    { instruments: [instrument({ capacitySi: '166.5' })] },
  ],
  // 35.88 lbf = 159.602 N
  [
    'readings/below-resolution',
    'just below',
    { instruments: [instrument({ resolutionSi: '159.7' })] },
    { instruments: [instrument({ resolutionSi: '159.6' })] },
  ],
  [
    'readings/beyond-capacity',
    'a diameter beyond the micrometer, though the tape reads further',
    { method: 'diameter', specimens: diameters(STATIONS), instruments: [{ ...micrometer, capacitySi: '0.00026' }, lengthMeasure] },
    { method: 'diameter', specimens: diameters(STATIONS), instruments: [micrometer, lengthMeasure] },
  ],
  ['ambient/out-of-range', 'too warm', { temperature: { value: '25.1', unit: '°C' } }, { temperature: { value: '25.0', unit: '°C' } }],
  ['ambient/out-of-range', 'too warm in °F', { temperature: { value: '78', unit: '°F' } }, { temperature: { value: '77', unit: '°F' } }],
  ['ambient/out-of-range', 'too cold', { temperature: { value: '-14.9', unit: '°C' } }, { temperature: { value: '15', unit: '°C' } }],
  ['ambient/out-of-range', 'too dry', { humidityPercent: '39.9' }, { humidityPercent: '40' }],
  ['ambient/out-of-range', 'too moist', { humidityPercent: '80.1' }, { humidityPercent: '80' }],
  // 3 of 8 = 37.5 %, 2 of 8 = 25 %; the limit is 30 %
  ['specimens/grip-breaks', 'three of eight', { specimens: broken(3) }, { specimens: broken(2) }],
  ['specimens/grip-breaks', 'slips are no grip breaks', { specimens: broken(3) }, { specimens: invalid(3) }],
  ['specimens/time-to-break', 'too fast', { specimens: timed('9.9') }, { specimens: timed('10') }],
  ['specimens/time-to-break', 'too slow', { specimens: timed('30.1') }, { specimens: timed('30') }],
  [
    'specimens/time-to-break',
    'where the method states a window',
    { specimens: timed('9') },
    { specimens: timed('9'), limits: { timeToBreakS: null } },
  ],
  [
    'readings/outlier',
    'one far below',
    { specimens: pulls([...FORCES.slice(0, 7), '33.00']) },
    { specimens: pulls([...FORCES.slice(0, 7), '35.30']) },
  ],
  ['readings/outlier', 'in the treated ones', knot(FORCES, [...WEAKER.slice(0, 7), '30.00']), knot(FORCES, WEAKER)],
  // CV of FORCES is 1.37 %
  ['specimens/spread-too-wide', 'above the limit', { limits: { maximumCvPercent: 1.3 } }, { limits: { maximumCvPercent: 1.5 } }],
  ['figures/unit-slip', '2.9 % from 2.2046', claimedAt(2.2046 * 1.029), claimedAt(2.2046 * 1.031)],
  ['figures/unit-slip', 'the inverse of 2.2046', claimedAt(1 / 2.2046), claimedAt(1 / 2.3)],
  ['figures/unit-slip', '4.448', claimedAt(4.448), claimedAt(4.7)],
  ['figures/unit-slip', 'the inverse of 4.448', claimedAt(1 / 4.448), claimedAt(1 / 4.7)],
  ['figures/unit-slip', '9.80665', claimedAt(9.80665), claimedAt(9.4)],
  ['figures/unit-slip', 'the inverse of 9.80665', claimedAt(1 / 9.80665), claimedAt(1 / 9.4)],
  ['figures/unit-slip', '25.4', claimedAt(25.4), claimedAt(26.5)],
  ['figures/unit-slip', 'the inverse of 25.4', claimedAt(1 / 25.4), claimedAt(1)],
  [
    'figures/unit-slip',
    'in the diameter',
    {
      method: 'diameter',
      specimens: diameters(STATIONS),
      instruments: [micrometer],
      claims: [{ quantity: 'diameter', valueSi: '0.00001015' }],
    },
    {
      method: 'diameter',
      specimens: diameters(STATIONS),
      instruments: [micrometer],
      claims: [{ quantity: 'breakingForce', valueSi: '0.00001015' }],
    },
  ],
  [
    'figures/unit-slip',
    'in the linear density (22.17 tex)',
    {
      method: 'linear-density',
      specimens: WEIGHED,
      instruments: [balance, lengthMeasure],
      claims: [{ quantity: 'linearDensity', valueSi: '0.00004888' }],
    },
    {
      method: 'linear-density',
      specimens: WEIGHED,
      instruments: [balance, lengthMeasure],
      claims: [{ quantity: 'linearDensity', valueSi: '0.0000222' }],
    },
  ],
  // 162.91 N over 0.0362 mm² = 4500.3 MPa; over 0.0363 mm² = 4487.9 MPa
  ['figures/beyond-the-fibre', 'UHMWPE', { input: { knownAreaMm2: 0.0362 } }, { input: { knownAreaMm2: 0.0363 } }],
  [
    'figures/beyond-the-fibre',
    'nylon in capitals',
    { material: 'Nylon', input: { knownAreaMm2: 0.12 } },
    { material: 'Nylon', input: { knownAreaMm2: 0.13 } },
  ],
  [
    'figures/beyond-the-fibre',
    'any material',
    { material: 'gossamer', input: { knownAreaMm2: 0.02 } },
    { material: 'gossamer', input: { knownAreaMm2: 0.03 } },
  ],
  ['figures/beyond-the-fibre', 'where an area is known', { input: { knownAreaMm2: 0.01 } }, { input: { knownAreaMm2: null } }],
  [
    'figures/retention-above-whole',
    'the whole interval above',
    knot(WEAKER, STRONGER),
    knot(
      WEAKER,
      WEAKER.map((force) => (Number(force) + 0.1).toFixed(2)),
    ),
  ],
  ['readings/same-as-earlier', 'another has them', { input: { sameReadingsAs: ['S-2026-0003'] } }, { input: { sameReadingsAs: [] } }],
  // 36.52 lbf is 162.449 N.
  [
    'trace/peak-differs',
    'a trace that reads 1.1 % more than the display',
    { input: { traces: [{ specimen: 1, peakForceN: 162.449 * 1.011 }] } },
    { input: { traces: [{ specimen: 1, peakForceN: 162.449 * 1.009 }] } },
  ],
  ['date/long-past', '61 days ago', { benchDay: '2025-11-18' }, { benchDay: '2025-11-19' }],
  ['specimens/many-invalid', 'four of eight', { specimens: invalid(4) }, { specimens: invalid(3) }],
  [
    'specimens/numbers-missing',
    'without number 5',
    { specimens: pulls(FORCES).filter(({ number }) => number !== 5) },
    { specimens: pulls(FORCES.slice(1)) },
  ],
  [
    'specimens/numbers-missing',
    'a treated one is missing',
    {
      ...knot(FORCES, WEAKER),
      specimens: [...pulls(FORCES), ...pulls(WEAKER, { condition: 'treated', from: 9 }).filter(({ number }) => number !== 12)],
    },
    { ...knot(FORCES, WEAKER), specimens: [...pulls(FORCES), ...pulls(WEAKER, { condition: 'treated', from: 9 })] },
  ],
  [
    'instruments/several-for-reading',
    'two load frames',
    { instruments: [instrument(), instrument({ code: 'R2' })] },
    { instruments: [instrument(), micrometer] },
  ],
  // The mean is 162.9 N.
  [
    'instruments/too-coarse',
    'steps of 1.04 %',
    { instruments: [instrument({ resolutionSi: '1.7' })] },
    { instruments: [instrument({ resolutionSi: '1.6' })] },
  ],
  [
    'readings/mixed-units',
    'one in newtons',
    { specimens: [...pulls(FORCES.slice(1), { from: 2 }), ...pulls(['162.45'], { unit: 'N' })] },
    { specimens: pulls(FORCES) },
  ],
  [
    'specimens/time-not-read',
    'no times under a window',
    { specimens: pulls(FORCES) },
    { specimens: pulls(FORCES), limits: { timeToBreakS: null } },
  ],
  [
    'readings/drift-in-order',
    'each weaker than the one before',
    { specimens: pulls(['37.1', '36.9', '36.8', '36.5', '36.6', '36.2', '36.1', '35.9']) },
    { specimens: pulls(FORCES) },
  ],
  ['figures/far-from-label', 'twice the claim', claimedAt(2.01), claimedAt(1.99)],
  ['figures/far-from-label', 'less than half of it', claimedAt(0.499), claimedAt(0.501)],
  // PE 1.5 is 300 denier (trade table, from memory): at 0.97 g/cm³ a solid rod of 0.209 mm; 5 % below is 0.1987 mm.
  [
    'label/against-itself',
    'thinner than its fibre',
    {
      claims: [
        { quantity: 'peNumber', valueSi: '1.5' },
        { quantity: 'diameter', valueSi: '0.000198' },
      ],
    },
    {
      claims: [
        { quantity: 'peNumber', valueSi: '1.5' },
        { quantity: 'diameter', valueSi: '0.0002' },
      ],
    },
  ],
  ['rig/out-of-control', 'out', onRig('outOfControl'), onRig('noEvidence')],
  ['rig/no-evidence', 'none', onRig('noEvidence'), onRig('outOfControl')],
  ['rig/no-evidence', 'of a rig, not of a micrometer', onRig('noEvidence'), onMicrometer('noEvidence')],
  ['rig/out-of-control', 'of a rig, not of a micrometer', onRig('outOfControl'), onMicrometer('outOfControl')],
  ['rig/learning', 'its second pull', onRig('learning'), onRig('inControl')],
  ['rig/learning', 'of a rig, not of a micrometer', onRig('learning'), onMicrometer('learning')],
  ['date/before-the-edition', 'the day before it opens', { input: { opensOn: '2026-01-18' } }, { input: { opensOn: '2026-01-17' } }],
  ['date/before-its-time', 'the day before its spool', { input: { obtainedOn: '2026-01-18' } }, { input: { obtainedOn: '2026-01-17' } }],
  ['tester/declared-interest', 'declared', { input: { hasDeclaredInterest: true } }, { input: { hasDeclaredInterest: false } }],
  ['tester/not-blind', 'the key was read', { input: { keyReadings: ['key'] } }, { input: { keyReadings: [] } }],
  ['tester/many-previews', 'one more than is usual', { input: { previews: 201 } }, { input: { previews: 200 } }],
  ['retest/same-hands', 'the same rig', { input: { secondTime: ['R1 pulled it the first time'] } }, { input: { secondTime: [] } }],
  ['tester/seen-label', 'seen', { seenLabel: true }, { seenLabel: false }],
  ['readings/missing-for-method', 'no treated specimens', { method: 'abrasion' }, { ...knot(FORCES, WEAKER), method: 'abrasion' }],
  [
    'readings/missing-for-method',
    'a station without its narrowest reading',
    {
      method: 'diameter',
      specimens: diameters(STATIONS).map(({ number, readings }) => ({ number, readings: number === 2 ? readings.slice(0, -1) : readings })),
      instruments: [micrometer],
    },
    { method: 'diameter', specimens: diameters(STATIONS), instruments: [micrometer] },
  ],
  [
    'readings/missing-for-method',
    'fewer stations than the method states',
    {
      method: 'diameter',
      specimens: diameters(STATIONS),
      instruments: [micrometer],
      series: [{ ...OUTLINE, stations: STATIONS[0]!.length + 1 }],
    },
    {
      method: 'diameter',
      specimens: diameters(STATIONS),
      instruments: [micrometer],
      series: [{ ...OUTLINE, stations: STATIONS[0]!.length }],
    },
  ],
  [
    'readings/missing-for-method',
    'a time and no force',
    { specimens: [...pulls(FORCES), { number: 9, readings: [{ role: 'timeToBreak', value: '18', unit: 's' }] }] },
    { specimens: pulls([...FORCES, '36.48'], { times: ['18'] }) },
  ],
  [
    'readings/missing-for-method',
    'a length without its mass',
    {
      method: 'linear-density',
      specimens: WEIGHED.map((specimen, i) => (i === 2 ? { ...specimen, readings: specimen.readings.slice(1) } : specimen)),
      instruments: [balance, lengthMeasure],
    },
    { method: 'linear-density', specimens: WEIGHED, instruments: [balance, lengthMeasure] },
  ],
];
