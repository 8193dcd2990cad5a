import { observe } from '../check.js';
import type { Check, CheckLimit } from '../check.js';

const stress = (words: string, value: number): CheckLimit => ({ words, value, unit: 'MPa', atLeast: 100, atMost: 20_000 });
const LIMITS = {
  uhmwpe: stress('UHMWPE', 4500),
  aramid: stress('Aramid', 4200),
  polyester: stress('Polyester', 1400),
  nylon: stress('Nylon', 1300),
  fluorocarbon: stress('Fluorocarbon', 1000),
  other: stress('Any other material', 7500),
};

export const beyondTheFibre: Check<keyof typeof LIMITS> = {
  code: 'figures/beyond-the-fibre',
  title: 'Stress above what the fibre can carry',
  severity: 'held',
  looksAt: ['figures', 'knownAreaMm2', 'variant'],
  explains:
    'Force over cross-section cannot exceed the strength of the filament itself: the force, the diameter or the label of the spool is wrong.',
  limit: 'Breaking stress that no commercial filament of the material exceeds.',
  limits: LIMITS,
  source: 'Textbook ranges with room, from memory; any other material: carbon fibre, the strongest there is to buy',
  example: 'A UHMWPE braid of 0.036 mm² that parts at 163 N.',
  run({ figures, knownAreaMm2, variant }, limits) {
    const material = variant.material.trim().toLowerCase();
    const limitMPa = limits[Object.hasOwn(LIMITS, material) ? (material as keyof typeof LIMITS) : 'other'];
    const areaMm2 = figures.areaMm2 ?? knownAreaMm2;
    if (areaMm2 === null || !figures.breakingForceN) return [];
    const stressMPa = figures.breakingForceN.mean / areaMm2;
    if (stressMPa <= limitMPa) return [];
    return [
      observe(`${stressMPa.toFixed(0)} MPa is above the ${limitMPa} MPa that ${variant.material} can carry.`, {
        actual: `${stressMPa.toFixed(0)} MPa`,
        expected: `at most ${limitMPa} MPa`,
      }),
    ];
  },
};
