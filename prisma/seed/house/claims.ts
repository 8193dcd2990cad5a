import { Draws } from '../model/draws.js';
import { trueLine } from '../model/true-line.js';
import { isStrand } from './variants.js';
import type { DemoVariant } from './variants.js';

/** What a label says. */
export interface DemoClaim {
  readonly quantity: 'breakingForce' | 'diameter' | 'peNumber';
  readonly basis: 'average' | 'maximum' | 'notStated' | 'class';
  readonly printed: { readonly text: string; readonly unit: string };
  readonly source: string;
}

const N_PER = { lbf: 4.4482216152605, kgf: 9.80665 };
const LABEL = 'Printed on the box';

/** Rated strength after the maker's habit, PE number, and a diameter: nominal on a braid, which no braid keeps. */
export function demoClaims(seed: number, variant: DemoVariant): DemoClaim[] {
  const { maker, size, line } = variant;
  const draws = new Draws(seed, 'label', line.slug);
  const forceN = trueLine(seed, { ...variant, isFirstColour: true, slug: variant.line.slug + size }).breakingForceN;
  const printedForce = (forceN / N_PER[maker.printsIn]) * maker.labelOptimism * draws.normal(1, 0.008);
  const text = maker.printsIn === 'kgf' ? printedForce.toFixed(1) : String(Math.round(printedForce));
  const force: DemoClaim = { quantity: 'breakingForce', basis: basisOf(variant), printed: { text, unit: maker.printsIn }, source: LABEL };
  if (isStrand(line)) return [force, { quantity: 'diameter', basis: 'average', printed: { text: size, unit: 'mm' }, source: LABEL }];
  // Trade table: PE 1 is 0.165 mm, others by the square root (from memory).
  const nominalMm = (0.165 * Math.sqrt(Number(size))).toFixed(3);
  return [
    force,
    { quantity: 'peNumber', basis: 'class', printed: { text: size, unit: 'PE' }, source: LABEL },
    { quantity: 'diameter', basis: 'notStated', printed: { text: nominalMm, unit: 'mm' }, source: 'Table on the inside of the box' },
  ];
}

/** Bold labels state the most that ever was pulled. */
const basisOf = ({ maker }: DemoVariant): DemoClaim['basis'] =>
  maker.labelOptimism > 1.15 ? 'maximum' : maker.labelOptimism > 1.05 ? 'notStated' : 'average';
