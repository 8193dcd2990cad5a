import type { PlannedDivision } from '../../../api/contract/endpoints/editions.js';
import type { SchemeRequest } from '../../../api/contract/endpoints/schemes.js';

const shared = { direction: 'more', weight: '1', minimum: { specimens: 5, testers: 1, rigs: 1 } } as const;
const share = { ...shared, section: null, unit: '%', places: 1, tradeUnit: null, tradePlaces: null } as const;

/** Five categories, one place in each, lowest sum first. */
export const demoScheme: SchemeRequest = {
  slug: 'five-places',
  number: 1,
  name: 'Five places',
  words:
    'Each variant gets a place in each of five categories: apparent breaking stress, abrasion retention, knot retention with the Palomar knot and with the FG knot, and strength honesty. The five places are added and the lowest sum comes first. Equal sums share a place. Category places are counted with every variant that was tested, excluded ones too. A result counts from five valid specimens on. A variant without a result that counts in one category is listed in the others but not placed overall.',
  rules: {
    combine: 'sumOfPlaces',
    countPlaces: 'beforeExclusions',
    tieBreak: 'none',
    categories: [
      {
        ...shared,
        code: 'apparent-stress',
        name: 'Apparent breaking stress',
        quantity: 'apparentStress',
        unit: 'MPa',
        places: 0,
        tradeUnit: 'psi',
        tradePlaces: 0,
        method: 'straight-pull',
        series: 'untreated',
        section: { method: 'diameter', series: 'outline' },
        conditions: 'Straight pull, nothing tied, over the circle of the measured mean diameter',
      },
      {
        ...share,
        code: 'abrasion-retention',
        name: 'Abrasion retention',
        quantity: 'retention',
        method: 'abrasion',
        series: 'abraded',
        conditions: '100 double strokes over a wet ceramic bar at 5 N, then straight pull',
      },
      {
        ...share,
        code: 'palomar-retention',
        name: 'Knot retention, Palomar',
        quantity: 'retention',
        method: 'palomar-knot',
        series: 'knotted',
        conditions: 'Palomar knot on a 3 mm ring against straight pull',
      },
      {
        ...share,
        code: 'fg-retention',
        name: 'Knot retention, FG',
        quantity: 'retention',
        method: 'fg-knot',
        series: 'knotted',
        conditions: 'FG knot on a nylon leader of 0.70 mm against straight pull',
      },
      {
        ...share,
        code: 'strength-honesty',
        name: 'Strength honesty',
        quantity: 'strengthHonesty',
        method: 'straight-pull',
        series: 'untreated',
        conditions: 'Measured over rated strength as printed, straight pull',
      },
    ],
  },
};

/** The same without the knot that holds a leader to a braid: nobody ties a single strand so. */
export const demoStrandScheme: SchemeRequest = {
  ...demoScheme,
  slug: 'four-places',
  name: 'Four places',
  words:
    'Each variant gets a place in each of four categories: apparent breaking stress, abrasion retention, knot retention with the Palomar knot, and strength honesty. The FG knot, which holds a leader to a braid, is pulled and not ranked. The four places are added and the lowest sum comes first. Equal sums share a place. Category places are counted with every variant that was tested, excluded ones too. A result counts from five valid specimens on. A variant without a result that counts in one category is listed in the others but not placed overall.',
  rules: { ...demoScheme.rules, categories: demoScheme.rules.categories.filter(({ code }) => code !== 'fg-retention') },
};

const division = (slug: string, name: string, material: string, { slug: scheme, number }: SchemeRequest): PlannedDivision => ({
  slug,
  name,
  takes: { materials: [material], constructions: [] },
  scheme: { slug: scheme, number },
});

/** Braid, nylon and fluorocarbon are bought for different ends; each is compared with its own kind. */
export const demoDivisions: readonly PlannedDivision[] = [
  division('braided', 'Braided', 'UHMWPE', demoScheme),
  division('nylon', 'Nylon', 'nylon', demoStrandScheme),
  division('fluorocarbon', 'Fluorocarbon', 'fluorocarbon', demoStrandScheme),
];
