import { abrasion } from './abrasion.js';
import type { DemoMethod } from './demo-method.js';
import { diameter, linearDensity } from './measuring.js';
import { fgKnot } from './fg-knot.js';
import { palomarKnot } from './palomar-knot.js';
import { straightPull } from './straight-pull.js';

export type DemoMethodSlug = 'straight-pull' | 'palomar-knot' | 'fg-knot' | 'abrasion' | 'diameter' | 'linear-density';

export const demoMethods: readonly DemoMethod[] = [straightPull, palomarKnot, fgKnot, abrasion, diameter, linearDensity];

/** Version in force on a bench day. */
export function versionOn(slug: DemoMethodSlug, day: string): number {
  const method = demoMethods.find((one) => one.slug === slug);
  const version = method?.versions.findLast(({ effectiveFrom }) => effectiveFrom <= day);
  if (!version) throw new Error(`No version of ${slug} is in force on ${day}; give the bench day a later date.`);
  return version.number;
}
