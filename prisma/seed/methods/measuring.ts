import { MEASURING_CAUTIONS } from './cautions.js';
import type { DemoMethod } from './demo-method.js';
import { PULLING_LIMITS } from './pulling.js';

const LIMITS = { ...PULLING_LIMITS, timeToBreakS: null, gripBreakSharePercent: 0 };

export const diameter: DemoMethod = {
  slug: 'diameter',
  name: 'Diameter',
  versions: [
    {
      number: 1,
      effectiveFrom: '2023-09-01',
      effectiveUntil: null,
      isComparableWithPrevious: true,
      limits: LIMITS,
      series: [{ code: 'outline', kind: 'diameterAlongStations', stations: 3 }],
      parameters: {
        areaFrom: 'circle',
        reproducibilityPercent: 1,
        places: { diameter: 3, outOfRoundness: 1 },
        settings: [{ name: 'Hanging weight', value: '50', unit: 'g' }],
      },
      wording: {
        purpose:
          'Finds the mean diameter of the outline and how far it is from round. The outline of a braid holds air; the figure is that of the outline, not of the fibre.',
        apparatus: ['Optical gauge, or micrometer with a ratchet of 0.5 N and flat faces of 6 mm', 'Weight of 50 g', 'Turning holder'],
        steps: [
          'Hang the weight on 1 m of line and wait until it stops turning.',
          'At three stations, 200 mm apart, turn the line or the gauge through half a turn: write down the widest and the narrowest reading.',
          'Do so with five specimens, cut 5 m apart.',
        ],
        formulae: [
          {
            figure: 'Mean diameter d',
            formula: 'd = mean of (w + n) / 2 over the stations',
            where: 'w is the widest and n the narrowest reading of a station',
          },
          {
            figure: 'Out-of-roundness O',
            formula: 'O = mean of 100 · (w − n) / ((w + n) / 2)',
            where: 'w and n as above (common practice)',
          },
          { figure: 'Cross-section A', formula: 'A = π d² / 4', where: 'd is the mean diameter (common practice)' },
        ],
        cautions: MEASURING_CAUTIONS,
        sources: ['JCGM 100:2008, Guide to the expression of uncertainty in measurement', 'Stations and weight: common practice'],
        changes: 'First version.',
      },
    },
  ],
};

export const linearDensity: DemoMethod = {
  slug: 'linear-density',
  name: 'Linear density',
  versions: [
    {
      number: 1,
      effectiveFrom: '2023-09-01',
      effectiveUntil: null,
      isComparableWithPrevious: true,
      limits: { ...LIMITS, maximumCvPercent: 5 },
      series: [{ code: 'mass', kind: 'linearDensity' }],
      parameters: {
        areaFrom: null,
        reproducibilityPercent: 1,
        places: { linearDensity: 2 },
        settings: [{ name: 'Preload while measuring the length', value: '0.5', unit: 'cN/tex' }],
      },
      wording: {
        purpose:
          'Finds the mass of a length: how much fibre is in the line, whatever its outline. On a braid it tells whether the PE number is true.',
        apparatus: ['Balance read to 0.1 mg', 'Rule of 2 m with a clamp and a hanging weight', 'Sharp blade'],
        steps: [
          'Condition the spool for 24 hours.',
          'Hang the preload, let the line stop turning, mark and cut 2 m.',
          'Weigh the piece, coiled, without touching it by hand.',
          'Do so with five specimens, cut 5 m apart.',
        ],
        formulae: [
          {
            figure: 'Linear density T',
            formula: 'T = m / l',
            where: 'm is the mass in grams, l the length in kilometres; 1 tex = 1 g/km (ISO 1144)',
          },
          { figure: 'PE number', formula: 'PE = 9 · T / 200', where: 'T in tex; PE 1 is 200 denier (trade association table)' },
        ],
        cautions: [...MEASURING_CAUTIONS, 'Cut away from yourself.'],
        sources: ['ISO 1144, Universal system for designating linear density (tex system)', 'Length and preload: common practice'],
        changes: 'First version.',
      },
    },
  ],
};
