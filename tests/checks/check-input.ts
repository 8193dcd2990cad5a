import type { CheckedClaim, CheckInput, CheckedInstrument } from '../../api/checks/check-input.js';
import type { MethodLimits } from '../../api/contract/endpoints/methods.js';
import { checkSubmission } from '../../api/checks/check-submission.js';
import type { Finding } from '../../api/checks/finding.js';
import { toSpecimensInSi } from '../../api/readings/readings-si.js';
import { submissionContent } from '../../api/contract/submission-content.js';
import type { MethodSeries } from '../../api/contract/method-series.js';
import { METHOD_SERIES } from '../support/method-series.js';
import { computeSubmissionFigures } from '../../api/readings/submission-figures.js';

/** Eight pulls that no check minds. */
export const FORCES = ['36.52', '36.10', '37.05', '36.77', '36.31', '35.88', '37.41', '36.95'];

export interface Case {
  readonly method: keyof typeof METHOD_SERIES;
  readonly benchDay: string;
  readonly temperature: { value: string; unit: string };
  readonly humidityPercent: string;
  readonly seenLabel: boolean;
  readonly fewerBecause?: string;
  readonly specimens: readonly object[];
  readonly limits: Partial<MethodLimits>;
  readonly effectiveFrom: string;
  readonly effectiveUntil: string | null;
  readonly instruments: readonly CheckedInstrument[];
  readonly material: string;
  readonly claims: readonly CheckedClaim[];
  readonly input: Partial<CheckInput>;
  /** What the method version yields, where it is not what the method of this name yields in the tests. */
  readonly series?: readonly MethodSeries[];
  /** What the method version sets of its checks. */
  readonly checks?: CheckInput['method']['checks'];
}

interface PullOptions {
  readonly unit?: string;
  readonly condition?: string;
  readonly from?: number;
  readonly times?: readonly string[];
}

/** Specimens with one breaking force each. */
export const pulls = (forces: readonly string[], { unit = 'lbf', condition = 'untreated', from = 1, times }: PullOptions = {}) =>
  forces.map((value, i) => ({
    number: from + i,
    condition,
    readings: [
      { role: 'breakingForce', value, unit },
      ...(times?.[i] === undefined ? [] : [{ role: 'timeToBreak', value: times[i], unit: 's' }]),
    ],
  }));

/** Specimens with stations of a widest and a narrowest diameter [mm]. */
export const diameters = (specimens: readonly (readonly (readonly [string, string])[])[]) =>
  specimens.map((stations, i) => ({
    number: i + 1,
    readings: stations.flatMap(([wide, narrow], at) => [
      { role: 'wideDiameter', station: at + 1, value: wide, unit: 'mm' },
      { role: 'narrowDiameter', station: at + 1, value: narrow, unit: 'mm' },
    ]),
  }));

const CALIBRATIONS = [{ certificate: 'C-1', validFrom: '2025-06-01', validUntil: '2026-05-31' }];

export const instrument = (change: Partial<CheckedInstrument> = {}): CheckedInstrument => ({
  code: 'R1',
  kind: 'loadFrame',
  dimension: 'force',
  capacitySi: '500',
  resolutionSi: '0.01',
  calibrations: CALIBRATIONS,
  ...change,
});
export const micrometer = instrument({
  code: 'M1',
  kind: 'micrometer',
  dimension: 'length',
  capacitySi: '0.025',
  resolutionSi: '0.000001',
});
export const balance = instrument({ code: 'B1', kind: 'balance', dimension: 'mass', capacitySi: '0.2', resolutionSi: '0.0000001' });
export const lengthMeasure = instrument({
  code: 'L1',
  kind: 'lengthMeasure',
  dimension: 'length',
  capacitySi: '10',
  resolutionSi: '0.001',
});

const TIMES = ['17', '18', '19', '18', '18', '17', '18', '18'];

const LIMITS: MethodLimits = {
  minimumSpecimens: 5,
  maximumCvPercent: 8,
  gripBreakSharePercent: 30,
  timeToBreakS: { low: 10, high: 30 },
  ambientTemperatureC: { low: 15, high: 25 },
  ambientHumidityPercent: { low: 40, high: 80 },
};

const QUIET: Case = {
  method: 'straight-pull',
  benchDay: '2026-01-17',
  temperature: { value: '20.5', unit: '°C' },
  humidityPercent: '63',
  seenLabel: false,
  specimens: pulls(FORCES, { times: TIMES }),
  limits: {},
  effectiveFrom: '2026-01-01',
  effectiveUntil: '2026-12-31',
  instruments: [instrument()],
  material: 'UHMWPE',
  claims: [],
  input: {},
};

/** What the checks see of a submission that none of them minds, apart from the change. */
export function checkInput(change: Partial<Case> = {}): CheckInput {
  const {
    specimens: handedIn,
    limits,
    instruments,
    temperature,
    humidityPercent,
    material,
    claims,
    effectiveFrom,
    effectiveUntil,
    checks = {},
    ...rest
  } = {
    ...QUIET,
    ...change,
  };
  const content = submissionContent.parse({
    edition: '2026',
    spool: 'K7M2QX4',
    method: rest.method,
    methodVersion: 1,
    benchDay: rest.benchDay,
    zone: 'Europe/Lisbon',
    instruments: instruments.map(({ code }) => code),
    ambient: { temperature, humidityPercent },
    seenLabel: rest.seenLabel,
    fewerBecause: rest.fewerBecause,
    specimens: handedIn,
  });
  const specimens = toSpecimensInSi(content.specimens);
  return {
    content,
    specimens,
    figures: computeSubmissionFigures(specimens, 'circle', 0.97),
    temperatureC: temperature.unit === '°F' ? ((Number(temperature.value) - 32) * 5) / 9 : Number(temperature.value),
    method: {
      slug: rest.method,
      number: 1,
      effectiveFrom,
      effectiveUntil,
      limits: { ...LIMITS, ...limits },
      series: rest.series ?? METHOD_SERIES[rest.method],
      checks,
    },
    instruments,
    variant: { material, densityGPerCm3: 0.97, claims },
    knownAreaMm2: null,
    hasDeclaredInterest: false,
    sameDayRatios: [],
    ownForcesN: [],
    ownDiameterMm: null,
    handIns: 1,
    previews: 0,
    keyReadings: [],
    secondTime: [],
    sameReadingsAs: [],
    rigEvidence: 'inControl',
    rigPulls: 12,
    opensOn: '2026-01-01',
    obtainedOn: '2025-12-03',
    today: '2026-01-18',
    ...rest.input,
  };
}

export const findingsOf = (change: Partial<Case> = {}): Finding[] => checkSubmission(checkInput(change));
export const codesOf = (change: Partial<Case> = {}): string[] => findingsOf(change).map(({ code }) => code);
