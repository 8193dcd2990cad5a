import type { SchemeCategory, SchemeRequest } from '../../../../api/contract/endpoints/schemes.js';

const share = {
  section: null,
  unit: '%',
  places: 1,
  tradeUnit: null,
  tradePlaces: null,
  direction: 'more',
  weight: '1',
  minimum: { specimens: 5, testers: 1, rigs: 1 },
} as const;

/** Categories that a scheme may begin with; each needs the method that it names. */
export const CATEGORY_TEMPLATES: readonly SchemeCategory[] = [
  {
    ...share,
    code: 'apparent-stress',
    name: 'Breaking stress',
    quantity: 'apparentStress',
    unit: 'MPa',
    places: 0,
    tradeUnit: 'psi',
    tradePlaces: 0,
    method: 'straight-pull',
    series: 'untreated',
    section: { method: 'diameter', series: 'outline' },
    conditions: 'Straight pull, dry; over the measured cross-section',
  },
  {
    ...share,
    code: 'knot-retention',
    name: 'Knot retention',
    quantity: 'retention',
    method: 'named-knot',
    series: 'knotted',
    conditions: 'The knot that the method names',
  },
  {
    ...share,
    code: 'abrasion-retention',
    name: 'Abrasion retention',
    quantity: 'retention',
    method: 'abrasion',
    series: 'abraded',
    conditions: 'The strokes that the method names',
  },
  {
    ...share,
    code: 'strength-honesty',
    name: 'Strength against the label',
    quantity: 'strengthHonesty',
    method: 'straight-pull',
    series: 'untreated',
    conditions: 'Measured over claimed breaking force',
  },
];

/** A scheme that adds the places of its categories; the lowest sum comes first. */
export function schemeFrom(slug: string, name: string, codes: readonly string[]): SchemeRequest {
  const categories = CATEGORY_TEMPLATES.filter(({ code }) => codes.includes(code));
  return {
    slug,
    number: 1,
    name,
    words: `The places in ${categories.length} categories are added; the lowest sum comes first. Ties stand.`,
    rules: { combine: 'sumOfPlaces', countPlaces: 'beforeExclusions', tieBreak: 'none', categories },
  };
}
