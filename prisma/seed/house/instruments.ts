/** A rig or gauge of the house, with its certificates. */
export interface DemoInstrument {
  readonly code: string;
  readonly kind: 'loadFrame' | 'forceGauge' | 'opticalGauge' | 'micrometer' | 'balance' | 'lengthMeasure' | 'abrader';
  readonly name: string;
  readonly capacity: Printed;
  readonly resolution: Printed;
  readonly calibrations: readonly DemoCalibration[];
}

interface Printed {
  readonly text: string;
  readonly unit: string;
}

export interface DemoCalibration {
  readonly certificate: string;
  readonly validFrom: string;
  readonly validUntil: string;
  readonly correctionPercent: string;
  readonly expandedUncertaintyPercent: string;
  readonly coverageFactor: string;
}

type Dates = readonly [from: string, until: string, correctionPercent?: string];

const printed = (text: string, unit: string): Printed => ({ text, unit });
const YEARS: readonly Dates[] = [
  ['2023-09-04', '2024-09-03'],
  ['2024-09-02', '2025-09-01'],
  ['2025-09-01', '2026-08-31'],
  ['2026-08-31', '2027-08-30'],
];

const certificates = (code: string, expandedUncertaintyPercent: string, dates: readonly Dates[] = YEARS): DemoCalibration[] =>
  dates.map(([validFrom, validUntil, correctionPercent = '0']) => ({
    certificate: `NQ-${code}-${validFrom.slice(0, 7)}`,
    validFrom,
    validUntil,
    correctionPercent,
    expandedUncertaintyPercent,
    coverageFactor: '2',
  }));

/** R2 stood without a certificate for twelve days of January 2025; R3 was sent in when it was found to drift in February 2024. */
const R2_DATES: readonly Dates[] = [
  ['2023-09-04', '2024-09-03'],
  ['2024-07-11', '2025-01-10'],
  ['2025-01-23', '2026-01-22'],
  ['2026-01-20', '2027-01-19'],
];
const R3_DATES: readonly Dates[] = [
  ['2023-09-04', '2024-02-11'],
  ['2024-02-12', '2025-02-11', '0.2'],
  ['2025-02-10', '2026-02-09'],
  ['2026-02-09', '2027-02-08'],
];

export const demoInstruments: readonly DemoInstrument[] = [
  {
    code: 'R1',
    kind: 'loadFrame',
    name: 'Load frame in the net loft',
    capacity: printed('500', 'N'),
    resolution: printed('0.1', 'N'),
    calibrations: certificates('R1', '0.5'),
  },
  {
    code: 'R2',
    kind: 'forceGauge',
    name: 'Force gauge on the screw stand',
    capacity: printed('50', 'kgf'),
    resolution: printed('0.01', 'kgf'),
    calibrations: certificates('R2', '0.8', R2_DATES),
  },
  {
    code: 'R3',
    kind: 'forceGauge',
    name: 'Force gauge on the boat winch',
    capacity: printed('100', 'lbf'),
    resolution: printed('0.01', 'lbf'),
    calibrations: certificates('R3', '1.0', R3_DATES),
  },
  {
    code: 'O1',
    kind: 'opticalGauge',
    name: 'Optical gauge',
    capacity: printed('5', 'mm'),
    resolution: printed('0.001', 'mm'),
    calibrations: certificates('O1', '0.6'),
  },
  {
    code: 'M1',
    kind: 'micrometer',
    name: 'Micrometer with ratchet',
    capacity: printed('25', 'mm'),
    resolution: printed('0.001', 'mm'),
    calibrations: certificates('M1', '0.8'),
  },
  {
    code: 'B1',
    kind: 'balance',
    name: 'Balance',
    capacity: printed('120', 'g'),
    resolution: printed('0.0001', 'g'),
    calibrations: certificates('B1', '0.1'),
  },
  {
    code: 'L1',
    kind: 'lengthMeasure',
    name: 'Steel rule of 2 m',
    capacity: printed('2', 'm'),
    resolution: printed('1', 'mm'),
    calibrations: certificates('L1', '0.1'),
  },
  {
    code: 'A1',
    kind: 'abrader',
    name: 'Abrader with ceramic bar',
    capacity: printed('20', 'N'),
    resolution: printed('0.1', 'N'),
    calibrations: certificates('A1', '1.0'),
  },
];

export const RIGS = ['R1', 'R2', 'R3'] as const;
export type Rig = (typeof RIGS)[number];
