import { scaleLinear } from 'd3-scale';
import { unitsBeside } from '../words/in-units.js';
import type { Mapped } from './mapped.js';
import { once } from './once.js';

/** Stresses [MPa] between which curves are drawn, at round numbers of each unit; without a line there is no range, and nothing to draw. */
const STRESSES = [500, 3000];

/** Force [N] of a line of a diameter [mm] that breaks at a stress [MPa]: F = σ · π d² / 4, and 1 MPa is 1 N/mm². */
const forceAt = (stress: number, diameter: number) => (stress * Math.PI * diameter ** 2) / 4;

function rangeOf(ends: (number | null)[]): [number, number] {
  const known = ends.filter((end) => end !== null);
  return [Math.min(...known), Math.max(...known)];
}

/** A map of lines but for what it marks, from 0 to 100 both ways: made once for all the pages that show it. */
export const mapDrawing = once((lines: readonly Mapped[]) => {
  const x = scaleLinear(
    rangeOf(lines.flatMap(({ diameter, claimedDiameter }) => [diameter.low, diameter.value, diameter.high, claimedDiameter])),
    [0, 100],
  ).nice(6);
  const y = scaleLinear(
    rangeOf([0, ...lines.flatMap(({ force, claimedForce }) => [force.high, force.value, claimedForce])]),
    [100, 0],
  ).nice(5);
  const [thinnest = 0, thickest = 1] = x.domain();
  const strongest = y.domain()[1] ?? 1;
  const curveOf = (stress: number) => {
    const leaves = Math.min(thickest, Math.sqrt((4 * strongest) / (Math.PI * stress)));
    const at = (diameter: number, force: number) => `${x(diameter).toFixed(2)} ${y(force).toFixed(2)}`;
    // A parabola is a Bézier curve of second order; its middle point lies where the tangents of both ends meet.
    const middle = at((thinnest + leaves) / 2, (stress * Math.PI * thinnest * leaves) / 4);
    const path = `M${at(thinnest, forceAt(stress, thinnest))}Q${middle} ${at(leaves, forceAt(stress, leaves))}`;
    return { path, endX: x(leaves), endY: y(forceAt(stress, leaves)), isOnTop: leaves < thickest };
  };
  const systems = [{ system: 'si', inSi: 1 }, ...unitsBeside('MPa')].map(({ system, inSi }) => {
    const round = scaleLinear()
      .domain(STRESSES.map((end) => end / inSi))
      .ticks(5);
    // A curve that is above the map from the thinnest on is not drawn.
    const crossing = round.filter((stress) => lines.length > 0 && forceAt(stress * inSi, thinnest) < strongest);
    return { system, curves: crossing.map((stress) => ({ words: String(stress), ...curveOf(stress * inSi) })) };
  });
  const across = (diameter: number) => x(diameter).toFixed(1);
  const up = (force: number) => y(force).toFixed(1);
  const whiskers = lines.flatMap(({ force, diameter }) => [
    ...(diameter.low === null || diameter.high === null ? [] : [`M${across(diameter.low)} ${up(force.value)}H${across(diameter.high)}`]),
    ...(force.low === null || force.high === null ? [] : [`M${across(diameter.value)} ${up(force.low)}V${up(force.high)}`]),
  ]);
  const dots = lines.map(({ force, diameter }) => `M${across(diameter.value)} ${up(force.value)}h0`);
  // What lies on another is drawn once.
  return { x, y, systems, whiskers: [...new Set(whiskers)].join(''), dots: [...new Set(dots)].join('') };
});
