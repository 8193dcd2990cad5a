import { observe } from '../check.js';
import type { Check } from '../check.js';

/** Breaking stress that no commercial filament of the material exceeds [MPa]; textbook ranges with room, from memory. */
const LIMIT_MPA: Readonly<Record<string, number>> = { uhmwpe: 4500, aramid: 4200, polyester: 1400, nylon: 1300, fluorocarbon: 1000 };
/** Carbon fibre, the strongest there is to buy, with room; from memory. */
const LIMIT_OF_ANY_MPA = 7500;

export const beyondTheFibre: Check = {
  code: 'figures/beyond-the-fibre',
  title: 'Stress above what the fibre can carry',
  severity: 'held',
  isSealed: true,
  explains:
    'Force over cross-section cannot exceed the strength of the filament itself: the force, the diameter or the label of the spool is wrong.',
  limit: [...Object.entries(LIMIT_MPA), ['any other', LIMIT_OF_ANY_MPA] as const]
    .map(([material, limit]) => `${material.replace('uhmwpe', 'UHMWPE')} ${limit} MPa`)
    .join(', '),
  run({ figures, knownAreaMm2, variant }) {
    const limit = LIMIT_MPA[variant.material.trim().toLowerCase()] ?? LIMIT_OF_ANY_MPA;
    const areaMm2 = figures.areaMm2 ?? knownAreaMm2;
    if (areaMm2 === null || !figures.breakingForceN) return [];
    const stressMPa = figures.breakingForceN.mean / areaMm2;
    if (stressMPa <= limit) return [];
    return [
      observe(`${stressMPa.toFixed(0)} MPa is above the ${limit} MPa that ${variant.material} can carry.`, {
        actual: `${stressMPa.toFixed(0)} MPa`,
        expected: `at most ${limit} MPa`,
        forTester: 'Check the unit of the readings and the code of the spool.',
      }),
    ];
  },
};
