import { toChartDocument } from '../../../api/reckoning/rigs/chart-document.js';
import { chartsOf } from '../../../api/reckoning/rigs/control-charts.js';
import type { ControlPullEvidence } from '../../../api/reckoning/evidence/control-pull-evidence.js';
import type { RigsDocument } from '../../../api/contract/documents/rigs-document.js';

const FORCES_N = [84.1, 83.6, 84.4, 83.9, 84.2, 83.8, 84.0, 84.3, 83.7, 84.1, 83.9, 80.1, 84.3];

const PULLS: readonly ControlPullEvidence[] = FORCES_N.map((forceN, index) => ({
  instrument: 'R1',
  method: 'straight-pull',
  controlLine: { code: 'C1', name: 'Reference braid', lot: 'K-7' },
  benchDay: `2026-01-${String(index + 1).padStart(2, '0')}`,
  tester: 'A. Fenn',
  readings: [{ text: forceN.toFixed(1), unit: 'N', valueN: forceN.toFixed(1) }],
  note: null,
  strike: null,
}));

const CERTIFICATE = {
  certificate: 'C-1',
  validFrom: '2026-01-01',
  validUntil: '2026-12-31',
  correctionPercent: '0',
  expandedUncertaintyPercent: '0.5',
  coverageFactor: '2',
};

export const inventedPeople = (): Pick<RigsDocument, 'testers' | 'agreement' | 'effects'> => ({
  testers: [
    { name: 'A. Fenn', submissions: 9, specimens: 72, benchDays: 4 },
    { name: 'Ottoline Tallandsworth', submissions: 7, specimens: 56, benchDays: 3 },
  ],
  agreement: [
    {
      quantity: 'breakingForce/straight-pull/untreated',
      name: 'Breaking force',
      specimenPercent: '3.9',
      betweenSubmissionsPercent: '0.7',
      degreesOfFreedom: 12,
    },
  ],
  effects: [
    {
      quantity: 'breakingForce/straight-pull/untreated',
      name: 'Breaking force',
      cause: 'rig',
      relativePercent: '0.62',
      degreesOfFreedom: 2,
      source: 'controlPulls',
    },
  ],
});

/** A rig that went out of control once and was cleared, and a gauge that pulls nothing. */
export const inventedRigs = (): RigsDocument['instruments'] => [
  {
    code: 'R1',
    kind: 'loadFrame',
    name: 'Load frame',
    capacity: { text: '500', unit: 'N' },
    resolution: { text: '0.1', unit: 'N' },
    calibrations: [CERTIFICATE],
    submissions: 12,
    charts: chartsOf(PULLS).map(toChartDocument),
  },
  {
    code: 'M1',
    kind: 'micrometer',
    name: 'Micrometer',
    capacity: { text: '25', unit: 'mm' },
    resolution: { text: '0.001', unit: 'mm' },
    calibrations: [{ ...CERTIFICATE, certificate: 'C-2' }],
    submissions: 4,
    charts: [],
  },
];
