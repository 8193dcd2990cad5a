import { PULLING_CAUTIONS } from './cautions.js';
import { CONDITION_STEP, MEAN_FORCE, PULLING_APPARATUS, PULLING_LIMITS, PULLING_SETTINGS } from './pulling.js';
import { KNOT_PLACES, KNOT_RETENTION, KNOT_SOURCES, knotted } from './knotting.js';
import type { DemoMethod } from './demo-method.js';

const APPARATUS = [...PULLING_APPARATUS, 'Steel ring of 3 mm wire, 20 mm inside, polished, in place of the upper grip'];
const PURPOSE =
  'Finds how much of its straight strength a line keeps when it is tied to a ring with a Palomar knot. Each knotted specimen is compared with straight ones of the same spool, so that rig and day cancel.';

export const palomarKnot: DemoMethod = {
  slug: 'palomar-knot',
  name: 'Palomar knot',
  versions: [
    {
      number: 1,
      effectiveFrom: '2023-09-01',
      effectiveUntil: null,
      isComparableWithPrevious: true,
      limits: PULLING_LIMITS,
      series: knotted('Palomar', 'Palomar on a ring, drawn down by hand, dry'),
      parameters: { areaFrom: null, reproducibilityPercent: 3, places: KNOT_PLACES, settings: PULLING_SETTINGS },
      wording: {
        purpose: PURPOSE,
        apparatus: APPARATUS,
        steps: [
          CONDITION_STEP,
          'Pull six straight specimens as in "Straight pull".',
          'Tie six specimens to the ring: double the line through the ring, an overhand knot in the doubled line, the loop over the ring. Draw down by hand, dry. Cut the tag end to 5 mm.',
          'Pull the knotted specimens. A knot that slips before the break is marked as slipped; one that was tied wrongly as mistied.',
        ],
        formulae: [MEAN_FORCE, KNOT_RETENTION],
        cautions: PULLING_CAUTIONS,
        sources: KNOT_SOURCES,
        changes: 'First version.',
      },
    },
    {
      number: 2,
      effectiveFrom: '2025-09-01',
      effectiveUntil: null,
      isComparableWithPrevious: false,
      limits: PULLING_LIMITS,
      series: knotted('Palomar', 'Palomar on a ring, wetted, seated at a fifth of the rated strength for ten seconds'),
      parameters: {
        areaFrom: null,
        reproducibilityPercent: 3,
        places: KNOT_PLACES,
        settings: [...PULLING_SETTINGS, { name: 'Seating load', value: '20', unit: '% of rated strength' }],
      },
      wording: {
        purpose: PURPOSE,
        apparatus: [...APPARATUS, 'Bowl of tap water'],
        steps: [
          CONDITION_STEP,
          'Pull six straight specimens as in "Straight pull".',
          'Tie six specimens to the ring: double the line through the ring, an overhand knot in the doubled line, the loop over the ring. Wet the knot.',
          'Seat the knot on the rig at a fifth of the rated strength for ten seconds, let go, cut the tag end to 5 mm.',
          'Pull the knotted specimens. A knot that slips before the break is marked as slipped; one that was tied wrongly as mistied.',
        ],
        formulae: [MEAN_FORCE, KNOT_RETENTION],
        cautions: PULLING_CAUTIONS,
        sources: KNOT_SOURCES,
        changes:
          'Knots are wetted and seated on the rig instead of being drawn down dry by hand. They slip less and keep a few per cent more, so results do not compare with those of version 1.',
      },
    },
  ],
};
