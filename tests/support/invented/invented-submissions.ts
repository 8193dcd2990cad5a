import type { PublishedSpecimen, PublishedSubmission, VariantName } from '../../../api/contract/documents/release-documents.js';
import { Draws } from './draws.js';
import type { Season } from './season.js';

const TESTERS = ['I. Vennick', 'Tester 2', 'M. Orrowby', 'S. Talland', 'Tester 5'];
const RIGS = ['NQ-F1', 'NQ-F2', 'NQ-F3'];

const force = (draws: Draws, forceN: number) => {
  const newtons = draws.normal(forceN, forceN * 0.025);
  const pounds = (newtons / 4.4482216152605).toFixed(2);
  return {
    role: 'breakingForce',
    station: null,
    entered: { text: pounds, unit: 'lbf' },
    value: String(Number(pounds) * 4.4482216152605),
    unit: 'N',
  };
};

function pulls(draws: Draws, forceN: number, retention: number): PublishedSpecimen[] {
  return Array.from({ length: 12 }, (_, index) => {
    const isTreated = index >= 6;
    const isBad = index === 4;
    return {
      number: index + 1,
      condition: isTreated ? 'treated' : 'untreated',
      state: isBad ? 'invalid' : index === 10 ? 'setAside' : 'valid',
      reason: isBad ? 'Broke at the grip' : index === 10 ? 'Knot seen to slip before it was drawn down; set aside by the reviewer.' : null,
      readings: [
        force(draws, forceN * (isTreated ? retention : 1)),
        { role: 'timeToBreak', station: null, entered: { text: draws.normal(20, 2).toFixed(1), unit: 's' }, value: '20.0', unit: 's' },
      ],
    };
  });
}

function stations(draws: Draws, diameterMm: number): PublishedSpecimen[] {
  const readings = Array.from({ length: 10 }, (_, index) => index + 1).flatMap((station) => {
    const at = (role: string, factor: number) => {
      const text = draws.normal(diameterMm * factor, 0.002).toFixed(3);
      return { role, station, entered: { text, unit: 'mm' }, value: text, unit: 'mm' };
    };
    return [at('wideDiameter', 1.045), at('narrowDiameter', 0.955)];
  });
  return [{ number: 1, condition: 'untreated', state: 'valid', reason: null, readings }];
}

/** Three submissions behind one variant: knot and straight pulls by two testers, and the diameter. */
export function inventSubmissions(season: Season, variant: VariantName, spool: string): PublishedSubmission[] {
  const draws = new Draws(season.year * 7919 + variant.slug.length * 104729 + season.entries.indexOf(variant));
  const forceN = Number(variant.ratedStrength?.value ?? '20') * 4.4482 * (0.9 + 0.3 * draws.uniform());
  const base = (index: number, method: string): PublishedSubmission => {
    const rig = draws.pick(RIGS);
    return {
      reference: `S-${season.year}-${String(season.entries.indexOf(variant) * 3 + index + 1).padStart(4, '0')}`,
      revision: index === 1 ? 2 : 1,
      method,
      methodVersion: 1,
      tester: draws.pick(TESTERS),
      reviewer: 'R. Quillane',
      rig,
      instruments: [{ code: rig, calibration: `NQ-CAL-${season.year - 1}-07` }],
      spool,
      benchDay: `${season.year}-01-${String(10 + index).padStart(2, '0')}`,
      isBlind: index !== 2,
      figures: [],
      findings:
        index === 0
          ? [
              {
                code: 'grubbs-outlier',
                message: 'Specimen 3 lies 2.9 standard deviations from the mean of 5.',
                resolution: 'Looked at under glass: a clean break mid-span. It stays.',
              },
            ]
          : [],
      specimens: [],
    };
  };
  const figure = (quantity: string, name: string, unit: string, value: number, places: number, specimens: number) => ({
    quantity,
    name,
    unit,
    value: value.toFixed(places),
    low: (value * 0.98).toFixed(places),
    high: (value * 1.02).toFixed(places),
    trade:
      unit === 'N'
        ? {
            unit: 'lbf',
            value: (value / 4.4482).toFixed(1),
            low: ((value / 4.4482) * 0.98).toFixed(1),
            high: ((value / 4.4482) * 1.02).toFixed(1),
          }
        : null,
    specimens,
    submissions: 1,
    testers: 1,
    rigs: 1,
    note: null,
  });
  const diameterMm = 0.2 + 0.1 * draws.uniform();
  const knot = (index: number) => ({
    ...base(index, 'named-knot'),
    figures: [
      figure('breakingForce/named-knot/untreated', 'Breaking force', 'N', forceN, 1, 5),
      figure('retention/named-knot/knotted', 'Knot retention, double uni', '%', 64.2, 1, 10),
    ],
    specimens: pulls(draws, forceN, 0.64),
  });
  return [
    knot(0),
    knot(1),
    {
      ...base(2, 'diameter'),
      figures: [figure('diameter/diameter/outline', 'Diameter', 'mm', diameterMm, 3, 1)],
      specimens: stations(draws, diameterMm),
    },
  ];
}
