import { PULLING_CAUTIONS } from './cautions.js';
import { CONDITION_STEP, MEAN_FORCE, PULLING_APPARATUS, PULLING_LIMITS, PULLING_SETTINGS, PULLING_SOURCES, UNTREATED } from './pulling.js';
import type { DemoMethod } from './demo-method.js';

export const abrasion: DemoMethod = {
  slug: 'abrasion',
  name: 'Abrasion over a ceramic bar',
  versions: [
    {
      number: 1,
      effectiveFrom: '2023-09-01',
      effectiveUntil: null,
      isComparableWithPrevious: true,
      limits: { ...PULLING_LIMITS, maximumCvPercent: 12 },
      series: [
        UNTREATED,
        {
          code: 'abraded',
          kind: 'breakingForce',
          treatment: {
            kind: 'abrasion',
            name: 'wet ceramic bar',
            words: '100 double strokes over a wet ceramic bar of 6 mm, 90° wrap, tensioned by 5 N',
          },
        },
      ],
      parameters: {
        areaFrom: null,
        reproducibilityPercent: 3,
        places: { retention: 1, breakingForce: 1 },
        settings: [
          ...PULLING_SETTINGS,
          { name: 'Double strokes', value: '100', unit: '' },
          { name: 'Tension while rubbing', value: '5', unit: 'N' },
        ],
      },
      wording: {
        purpose:
          'Finds how much of its straight strength a line keeps after rubbing over a hard wet edge. Abraded specimens are compared with fresh ones of the same spool, so that rig and day cancel.',
        apparatus: [
          ...PULLING_APPARATUS,
          'Abrader: ceramic bar of 6 mm, crank with 60 mm stroke, hanging weight of 5 N, drip of tap water',
        ],
        steps: [
          CONDITION_STEP,
          'Pull six fresh specimens as in "Straight pull".',
          'Lay a specimen over the wet bar at a right angle, hang the weight, make 100 double strokes at one a second. Turn the bar to a fresh place after each specimen.',
          'Let the specimen dry for an hour, then pull it with the rubbed length in the middle.',
          'Do so with six specimens. One that parts while it is rubbed is marked as handling damage.',
        ],
        formulae: [
          MEAN_FORCE,
          {
            figure: 'Abrasion retention B',
            formula: 'B = 100 · W / F',
            where: 'W is the mean breaking force of the abraded specimens, F that of the fresh ones; above 100 % it is reported as found',
          },
        ],
        cautions: [...PULLING_CAUTIONS, 'Keep fingers and sleeves out of the crank.'],
        sources: [
          'Fieller 1954, Some problems in interval estimation: the interval of a ratio',
          'Bar, tension and strokes: practice of this house',
          ...PULLING_SOURCES,
        ],
        changes: 'First version.',
      },
    },
  ],
};
