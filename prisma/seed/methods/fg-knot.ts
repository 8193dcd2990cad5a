import { PULLING_CAUTIONS } from './cautions.js';
import { KNOT_PLACES, KNOT_RETENTION, KNOT_SOURCES, knotted } from './knotting.js';
import { CONDITION_STEP, MEAN_FORCE, PULLING_APPARATUS, PULLING_LIMITS, PULLING_SETTINGS } from './pulling.js';
import type { DemoMethod } from './demo-method.js';

/** Turns and hitches: common practice, from memory. */
export const fgKnot: DemoMethod = {
  slug: 'fg-knot',
  name: 'FG knot',
  versions: [
    {
      number: 1,
      effectiveFrom: '2023-09-01',
      effectiveUntil: null,
      isComparableWithPrevious: true,
      limits: PULLING_LIMITS,
      series: knotted('FG', 'FG on a nylon leader of 0.70 mm: 20 crossed turns, wetted, drawn tight by hand, six locking hitches'),
      parameters: {
        areaFrom: null,
        reproducibilityPercent: 3,
        places: KNOT_PLACES,
        settings: [...PULLING_SETTINGS, { name: 'Leader of nylon', value: '0.70', unit: 'mm' }],
      },
      wording: {
        purpose:
          'Finds how much of its straight strength a line keeps when it is joined to a thick leader with an FG knot, which holds by friction and not by a bend. Each knotted specimen is compared with straight ones of the same spool, so that rig and day cancel.',
        apparatus: [...PULLING_APPARATUS, 'Leader: one spool of nylon of 0.70 mm for the whole season', 'Bowl of tap water'],
        steps: [
          CONDITION_STEP,
          'Pull six straight specimens as in "Straight pull".',
          'Tie six specimens to the leader: hold it taut, lay 20 crossed turns of the line on it without overlap, wet the turns, draw them tight by hand until they darken, lock with six half hitches. Cut both tag ends.',
          'Lay the line on the upper capstan and the leader on the lower one; pull. A knot that creeps off the leader is marked as slipped; one with turns that overlap as mistied.',
        ],
        formulae: [MEAN_FORCE, KNOT_RETENTION],
        cautions: PULLING_CAUTIONS,
        sources: [...KNOT_SOURCES, 'Turns, hitches and leader: common practice'],
        changes: 'First version.',
      },
    },
  ],
};
