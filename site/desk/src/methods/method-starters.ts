/** Methods that a new house may begin with: general wording of our own after the sources named; each house puts its own version on record. */
import type { MethodSeries } from '../../../../api/contract/method-series.js';
import { USUAL_CAUTIONS } from '../words/usual-cautions.js';
import type { MethodVersionRequest } from '../../../../api/contract/endpoints/methods.js';

export interface MethodStarter {
  readonly slug: string;
  readonly name: string;
  readonly version: Omit<MethodVersionRequest, 'effectiveFrom' | 'number' | 'effectiveUntil' | 'isComparableWithPrevious'>;
}

const AIR = { ambientTemperatureC: { low: 18, high: 26 }, ambientHumidityPercent: { low: 40, high: 75 } };
const PULL = { minimumSpecimens: 5, maximumCvPercent: 12, gripBreakSharePercent: 40, timeToBreakS: { low: 8, high: 40 }, ...AIR };
/** Other rigs, testers and days differ by some 2 % (common practice): a house that has no second pulls yet has places by it, and gives it up for what its own years show. */
const USUAL = { areaFrom: null, reproducibilityPercent: 2, places: {}, settings: [] };
const UNTREATED: MethodSeries = { code: 'untreated', kind: 'breakingForce', treatment: null };
const words = (purpose: string, apparatus: string[], steps: string[], sources: string[]) => ({
  ...{ purpose, apparatus, steps, sources },
  formulae: [],
  cautions: [...USUAL_CAUTIONS],
  changes: 'First version.',
});

export const METHOD_STARTERS: readonly MethodStarter[] = [
  {
    slug: 'straight-pull',
    name: 'Straight pull',
    version: {
      limits: PULL,
      series: [UNTREATED],
      parameters: {
        ...USUAL,
        areaFrom: 'circle',
        places: { breakingForce: 1 },
        settings: [{ name: 'gauge length', value: '500', unit: 'mm' }],
      },
      checks: {},
      wording: words(
        'Finds the force at which the line parts when nothing is tied in it.',
        ['Force gauge or load frame with a valid certificate', 'Bollard grips', 'Guard'],
        [
          'Let the line rest in the air of the room.',
          'Wind each end three turns on a bollard.',
          'Pull at a constant rate until it parts.',
          'Write down the peak force and the time, and where it parted.',
        ],
        ['After ISO 2062 (yarns from packages, single-end breaking force), with grips for fishing line: common practice'],
      ),
    },
  },
  {
    slug: 'diameter',
    name: 'Diameter',
    version: {
      limits: { ...PULL, minimumSpecimens: 1, timeToBreakS: null },
      series: [{ code: 'outline', kind: 'diameterAlongStations', stations: 5 }],
      parameters: { ...USUAL, areaFrom: 'ellipse', places: { diameter: 3 } },
      checks: {},
      wording: words(
        'Finds how thick the line is, and how round.',
        ['Micrometer or optical gauge with a valid certificate'],
        [
          'Hold the line under a light, constant load.',
          'Turn it at each station; write down the widest and the narrowest reading.',
          'Read five stations, a metre apart.',
        ],
        ['Common practice'],
      ),
    },
  },
  {
    slug: 'named-knot',
    name: 'Named knot',
    version: {
      limits: PULL,
      series: [
        UNTREATED,
        {
          code: 'knotted',
          kind: 'breakingForce',
          treatment: { kind: 'knot', name: 'Palomar', words: 'Palomar on the ring, wetted, drawn down slowly' },
        },
      ],
      parameters: { ...USUAL, places: { retention: 1 } },
      checks: {},
      wording: words(
        'Finds how much of its straight strength the line keeps in a knot.',
        ['As for the straight pull', 'Steel ring of 3 mm wire'],
        [
          'Pull the straight specimens first.',
          'Tie the knot to the ring, wet it, draw it down slowly.',
          'Pull as a straight specimen; write down peak force and time.',
        ],
        ['Common practice'],
      ),
    },
  },
  {
    slug: 'abrasion',
    name: 'Abrasion',
    version: {
      limits: PULL,
      series: [
        UNTREATED,
        {
          code: 'abraded',
          kind: 'breakingForce',
          treatment: { kind: 'abrasion', name: 'Ceramic rod', words: '200 strokes over a 10 mm ceramic rod' },
        },
      ],
      parameters: { ...USUAL, places: { retention: 1 } },
      checks: {},
      wording: words(
        'Finds how much of its straight strength the line keeps after rubbing.',
        ['As for the straight pull', 'Abrader with a tensioning weight'],
        [
          'Pull the straight specimens first.',
          'Rub each treated specimen: 200 strokes over a 10 mm ceramic rod.',
          'Pull it as a straight specimen; write down peak force and time.',
        ],
        ['Common practice'],
      ),
    },
  },
];
