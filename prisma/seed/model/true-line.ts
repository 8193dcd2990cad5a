import type { DemoVariant } from '../house/variants.js';
import { Draws } from './draws.js';
import { MAKES, SELF_POLISHING } from './makes.js';
import type { MakeModel } from './makes.js';

/** PE 1 is 200 denier, 22.2 tex (trade association table, from memory). */
const TEX_PER_PE = 200 / 9;

/** What a variant truly is; nobody at the bench knows it. */
export interface TrueLine {
  readonly linearDensityTex: number;
  readonly breakingForceN: number;
  /** Of the outline, air included. */
  readonly diameterMm: number;
  readonly outOfRoundness: number;
  /** Coefficient of variation of single specimens [1]. */
  readonly spread: number;
  readonly palomarRetention: number;
  readonly fgRetention: number;
  readonly abrasionRetention: number;
}

/** The physical model: size → fibre → made line → outline. Sizes of a line share its fibre; colours differ by their dye. */
export function trueLine(seed: number, variant: DemoVariant): TrueLine {
  const make = MAKES[variant.line.make];
  const fibre = new Draws(seed, 'fibre', variant.line.slug);
  const own = new Draws(seed, 'variant', variant.slug);
  const tenacityCnPerTex = fibre.between(...make.tenacityCnPerTex) * variant.maker.quality;
  const linePalomar = fibre.between(...make.palomarRetention);
  const lineAbrasion = fibre.between(...make.abrasionRetention);
  const fg = new Draws(seed, 'fg', variant.line.slug);
  const linearDensityTex = linearDensity(variant, make, fibre) * own.normal(1, 0.012);
  const dye = variant.isFirstColour ? 1 : own.between(0.965, 0.995);
  const packing = make.packing === 1 ? 1 : make.packing * fibre.between(0.97, 1.03);
  return {
    linearDensityTex,
    breakingForceN: (linearDensityTex * tenacityCnPerTex * make.efficiency * dye) / 100,
    diameterMm: Math.sqrt((4 * linearDensityTex) / (1000 * Math.PI * Number(make.densityGPerCm3) * packing)),
    outOfRoundness: make.outOfRoundness * own.between(0.8, 1.25),
    spread: make.spread * own.between(0.85, 1.2),
    palomarRetention: linePalomar * own.normal(1, 0.012),
    fgRetention: fg.between(...make.fgRetention) * new Draws(seed, 'fg', variant.slug).normal(1, 0.012),
    abrasionRetention: variant.line.slug === SELF_POLISHING ? 1.008 : lineAbrasion * own.normal(1, 0.012),
  };
}

/** [tex] Braids come heavier than their PE number says, strands a little thicker than their label. */
function linearDensity({ size, line }: DemoVariant, make: MakeModel, fibre: Draws): number {
  if (make.material === 'UHMWPE') return TEX_PER_PE * Number(size) * fibre.between(1, 1.14);
  const diameterMm = Number(size) * fibre.between(1, 1.04);
  return (Math.PI / 4) * diameterMm ** 2 * Number(MAKES[line.make].densityGPerCm3) * 1000;
}
