import { PULLING_CAUTIONS } from './cautions.js';
import { CONDITION_STEP, MEAN_FORCE, PULLING_APPARATUS, PULLING_LIMITS, PULLING_SETTINGS, PULLING_SOURCES, UNTREATED } from './pulling.js';
import type { DemoMethod } from './demo-method.js';

export const straightPull: DemoMethod = {
  slug: 'straight-pull',
  name: 'Straight pull',
  versions: [
    {
      number: 1,
      effectiveFrom: '2023-09-01',
      effectiveUntil: null,
      isComparableWithPrevious: true,
      limits: PULLING_LIMITS,
      series: [UNTREATED],
      parameters: {
        areaFrom: 'circle',
        reproducibilityPercent: 1.5,
        places: { breakingForce: 1, apparentStress: 0, strengthHonesty: 1 },
        settings: PULLING_SETTINGS,
      },
      wording: {
        purpose:
          'Finds the force at which a line parts when nothing is tied in it, and from it the apparent breaking stress and how far the label keeps its word. "Apparent", because the outline of a braid holds air.',
        apparatus: PULLING_APPARATUS,
        steps: [
          CONDITION_STEP,
          'Cut 1.2 m. Lay five turns on each capstan without crossing them, clamp the tail, take up the slack at the preload.',
          'Close the guard. Start the timer with the moving grip.',
          'Write down the highest force and the time from first load to break.',
          'Look where it parted. A break within 5 mm of a grip does not count: mark it as broke at the grip, and keep the reading.',
          'Go on until eight specimens are pulled. Leave out none and repeat none because of its number.',
        ],
        formulae: [
          MEAN_FORCE,
          {
            figure: 'Apparent breaking stress σ',
            formula: 'σ = F / A,  A = π d² / 4',
            where: 'd is the mean diameter of the variant by the method "Diameter"',
          },
          {
            figure: 'Strength honesty H',
            formula: 'H = 100 · F / F_claimed',
            where: 'F_claimed is the rated strength as printed, in the same unit',
          },
        ],
        cautions: PULLING_CAUTIONS,
        sources: PULLING_SOURCES,
        changes: 'First version.',
      },
    },
  ],
};
