import type { SchemeRequest } from '../../../api/contract/endpoints/editions.js';

const shared = { direction: 'more', weight: '1', minimum: { specimens: 5, testers: 1, rigs: 1 } } as const;
const retention = { ...shared, unit: '%', places: 1, tradeUnit: null, tradePlaces: null } as const;

/** Four categories, one place in each, lowest sum first. */
export const demoScheme: SchemeRequest = {
  slug: 'four-places',
  number: 1,
  name: 'Four places',
  words:
    'Each variant gets a place in each of four categories: apparent breaking stress, abrasion retention, knot retention and strength honesty. The four places are added and the lowest sum comes first. Equal sums share a place. Category places are counted with every variant that was tested, excluded ones too. A result counts from five valid specimens on. A variant without a result that counts in one category is listed in the others but not placed overall.',
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
        conditions: 'Straight pull, nothing tied, over the circle of the measured mean diameter',
      },
      {
        ...retention,
        code: 'abrasion-retention',
        name: 'Abrasion retention',
        quantity: 'abrasionRetention',
        method: 'abrasion',
        conditions: '100 double strokes over a wet ceramic bar at 5 N, then straight pull',
      },
      {
        ...retention,
        code: 'knot-retention',
        name: 'Knot retention, Palomar',
        quantity: 'knotRetention',
        method: 'named-knot',
        conditions: 'Palomar knot on a 3 mm ring against straight pull',
      },
      {
        ...retention,
        code: 'strength-honesty',
        name: 'Strength honesty',
        quantity: 'strengthHonesty',
        method: 'straight-pull',
        conditions: 'Measured over rated strength as printed, straight pull',
      },
    ],
  },
};
