import { FORMAT_VERSION } from '../../../api/contract/documents/release-documents.js';
import type { CheckDocument, MethodDocument } from '../../../api/contract/documents/release-documents.js';

const CAUTIONS = [
  'A line under load stores energy and whips when it parts: wear eye protection and keep a guard between yourself and the line.',
  'Wear gloves to handle a loaded braid, and stay out of its path.',
  "Follow the limits of the rig's maker and the rules of the place you work in.",
];

const UNTREATED = { code: 'untreated', kind: 'breakingForce', treatment: null } as const;
const treated = (code: string, kind: 'knot' | 'abrasion', name: string, words: string): MethodDocument['series'] => [
  UNTREATED,
  { code, kind: 'breakingForce', treatment: { kind, name, words } },
];

const straightPull: MethodDocument = {
  formatVersion: FORMAT_VERSION,
  slug: 'straight-pull',
  name: 'Straight pull',
  number: 1,
  effectiveFrom: '2023-09-01',
  effectiveUntil: '2025-08-31',
  purpose: 'Finds the force at which an unknotted specimen parts, and from it the apparent breaking stress.',
  apparatus: ['Load frame or winch with a force gauge of class 1 or better', 'Two capstan grips of 25 mm radius', 'Timer read to 0.1 s'],
  steps: [
    'Condition the spool for 24 h in the room where it is pulled.',
    'Cut 1 m, lay four turns on each grip and take up the slack at 1 N.',
    'Pull at a steady rate so that the specimen parts within the window.',
    'Record the highest force, the time to break and where the specimen parted.',
  ],
  series: [UNTREATED],
  parameters: [
    { name: 'Free length', value: '250', unit: 'mm' },
    { name: 'Rate of extension', value: '250', unit: 'mm/min' },
  ],
  formulae: [
    { figure: 'Mean breaking force F', formula: 'F = (F₁ + F₂ + … + Fₙ) / n', where: 'n is the number of valid specimens' },
    {
      figure: 'Apparent breaking stress S',
      formula: 'S = F / A,  A = π d² / 4',
      where: 'd is the mean diameter; "apparent", because a braid’s outline holds air',
    },
  ],
  limits: [
    { name: 'Valid specimens, at least', value: '5', unit: '' },
    { name: 'Time to break', value: '20 ± 10', unit: 's' },
    { name: 'Share of grip breaks, at most', value: '30', unit: '%' },
  ],
  checks: ['grip-breaks', 'grubbs-outlier', 'time-to-break', 'unit-slip'],
  cautions: CAUTIONS,
  sources: ['JCGM 100:2008, Guide to the expression of uncertainty in measurement', 'House practice since 2019'],
  changes: 'First version.',
  isComparableWithPrevious: true,
};

/** Every method version of the invented house; the second straight pull breaks comparison with the first. */
export const inventedMethods: MethodDocument[] = [
  straightPull,
  {
    ...straightPull,
    number: 2,
    effectiveFrom: '2025-09-01',
    effectiveUntil: null,
    apparatus: ['Load frame or winch with a force gauge of class 1 or better', 'Two capstan grips of 40 mm radius', 'Timer read to 0.1 s'],
    changes: 'The grips have a radius of 40 mm in place of 25 mm, so that fewer specimens part at the grip. Forces read about 2 % higher.',
    isComparableWithPrevious: false,
  },
  {
    ...straightPull,
    slug: 'named-knot',
    name: 'Named knot',
    effectiveUntil: null,
    series: treated('knotted', 'knot', 'double uni', 'Double uni knot, wetted'),
    purpose: 'Finds how much of its straight strength a line keeps when tied with the double uni knot.',
    formulae: [
      {
        figure: 'Knot retention R',
        formula: 'R = 100 · K / F',
        where: 'K is the mean breaking force of knotted specimens, F that of straight ones of the same spool',
      },
    ],
    checks: ['grip-breaks', 'retention-above-100'],
  },
  {
    ...straightPull,
    slug: 'abrasion',
    name: 'Abrasion drum',
    effectiveUntil: null,
    series: treated('abraded', 'abrasion', 'paper drum', '200 strokes over a drum of grade 400 paper'),
    purpose: 'Finds how much of its straight strength a line keeps after 200 strokes over a drum of grade 400 paper.',
    formulae: [
      {
        figure: 'Abrasion retention R',
        formula: 'R = 100 · B / F',
        where: 'B is the mean breaking force of abraded specimens, F that of untreated ones of the same spool',
      },
    ],
    checks: ['grip-breaks', 'retention-above-100'],
  },
  {
    ...straightPull,
    slug: 'diameter',
    name: 'Diameter',
    effectiveUntil: null,
    series: [{ code: 'outline', kind: 'diameterAlongStations', stations: 10 }],
    purpose: 'Finds the mean diameter and how far the line is from round.',
    apparatus: ['Optical gauge read to 0.001 mm', 'Weight of 50 g'],
    steps: ['Hang the weight on the line.', 'At each of ten stations read the widest and the narrowest diameter.'],
    parameters: [{ name: 'Stations', value: '10', unit: '' }],
    formulae: [
      {
        figure: 'Out-of-roundness O',
        formula: 'O = 100 · (w − n) / ((w + n) / 2)',
        where: 'w is the widest and n the narrowest reading of a station',
      },
    ],
    limits: [{ name: 'Stations, at least', value: '8', unit: '' }],
    checks: ['unit-slip'],
    cautions: ['Keep fingers out of the gauge while the line is drawn through it.'],
  },
];

export const inventedChecks: CheckDocument[] = [
  {
    code: 'grip-breaks',
    title: 'Too many breaks at the grip',
    severity: 'held',
    explains: 'A specimen that parts at the grip measures the grip. Too many of them put the rest in doubt.',
    limit: 'The share that the method states',
  },
  {
    code: 'grubbs-outlier',
    title: 'Outlier',
    severity: 'note',
    explains: 'One reading lies far from the others. It is pointed out, never removed by itself.',
    limit: 'Grubbs, 1 % two-sided',
  },
  {
    code: 'retention-above-100',
    title: 'Retention above 100 %',
    severity: 'held',
    explains: 'A knot or wear cannot make a line stronger; the whole interval lies above 100 %.',
    limit: 'Lower end of the interval above 100 %',
  },
  {
    code: 'time-to-break',
    title: 'Time to break outside the window',
    severity: 'held',
    explains: 'A faster pull reads a higher force.',
    limit: 'The window that the method states',
  },
  {
    code: 'unit-slip',
    title: 'Unit slip',
    severity: 'blocks',
    explains: 'The measured value and the claim differ by a factor between two units, such as pounds and kilograms.',
    limit: 'Within 3 % of the factor',
  },
];
