import type { Make } from '../house/lines.js';

/** What a way of making does to fibre and outline. Ranges: common practice and bench lore, from memory. */
export interface MakeModel {
  readonly material: 'UHMWPE' | 'nylon' | 'fluorocarbon';
  readonly construction: 'braided' | 'hollowCore' | 'fused' | 'monofilament';
  readonly carriers: number | null;
  /** Density of the solid material [g/cm³]. */
  readonly densityGPerCm3: string;
  /** Strength of the fibre, or of the strand itself [cN/tex]. */
  readonly tenacityCnPerTex: readonly [number, number];
  /** Share of the fibre's strength that the made line keeps: braiding angle, twist, glue [1]. */
  readonly efficiency: number;
  /** Share of the outline that is solid, the rest is air [1]. */
  readonly packing: number;
  /** Wide over narrow diameter, less 1 [1]. */
  readonly outOfRoundness: number;
  /** Coefficient of variation of the breaking force between specimens [1]. */
  readonly spread: number;
  /** By a knot that bends the line on a ring. */
  readonly palomarRetention: readonly [number, number];
  /** By a knot that holds a leader with turns of the line: it suits a supple braid best, a single strand least. */
  readonly fgRetention: readonly [number, number];
  readonly abrasionRetention: readonly [number, number];
}

const uhmwpe = { material: 'UHMWPE', densityGPerCm3: '0.97', tenacityCnPerTex: [355, 400] } as const;
/** Rubbing a wet strand polishes this one and takes nothing off it that a pull would show. */
export const SELF_POLISHING = 'quietbight-f';

const strand = { construction: 'monofilament', carriers: null, efficiency: 1, packing: 1 } as const;

export const MAKES: Readonly<Record<Make, MakeModel>> = {
  braid4: {
    ...uhmwpe,
    construction: 'braided',
    carriers: 4,
    efficiency: 0.84,
    packing: 0.72,
    outOfRoundness: 0.16,
    spread: 0.042,
    palomarRetention: [0.58, 0.68],
    fgRetention: [0.74, 0.86],
    abrasionRetention: [0.6, 0.72],
  },
  braid8: {
    ...uhmwpe,
    construction: 'braided',
    carriers: 8,
    efficiency: 0.89,
    packing: 0.77,
    outOfRoundness: 0.11,
    spread: 0.035,
    palomarRetention: [0.6, 0.72],
    fgRetention: [0.78, 0.9],
    abrasionRetention: [0.56, 0.7],
  },
  braid12: {
    ...uhmwpe,
    construction: 'braided',
    carriers: 12,
    efficiency: 0.9,
    packing: 0.79,
    outOfRoundness: 0.09,
    spread: 0.032,
    palomarRetention: [0.62, 0.74],
    fgRetention: [0.79, 0.91],
    abrasionRetention: [0.52, 0.66],
  },
  hollow16: {
    ...uhmwpe,
    construction: 'hollowCore',
    carriers: 16,
    efficiency: 0.88,
    packing: 0.66,
    outOfRoundness: 0.3,
    spread: 0.038,
    palomarRetention: [0.56, 0.66],
    fgRetention: [0.7, 0.82],
    abrasionRetention: [0.55, 0.66],
  },
  fused: {
    ...uhmwpe,
    construction: 'fused',
    carriers: null,
    efficiency: 0.82,
    packing: 0.86,
    outOfRoundness: 0.13,
    spread: 0.045,
    palomarRetention: [0.62, 0.74],
    fgRetention: [0.66, 0.78],
    abrasionRetention: [0.62, 0.76],
  },
  nylon: {
    ...strand,
    material: 'nylon',
    densityGPerCm3: '1.14',
    tenacityCnPerTex: [74, 90],
    outOfRoundness: 0.02,
    spread: 0.022,
    palomarRetention: [0.78, 0.9],
    fgRetention: [0.6, 0.72],
    abrasionRetention: [0.82, 0.93],
  },
  fluorocarbon: {
    ...strand,
    material: 'fluorocarbon',
    densityGPerCm3: '1.78',
    tenacityCnPerTex: [34, 41],
    outOfRoundness: 0.018,
    spread: 0.025,
    palomarRetention: [0.72, 0.86],
    fgRetention: [0.56, 0.68],
    abrasionRetention: [0.9, 0.975],
  },
};
