import { scaleLinear, scaleLog } from 'd3-scale';
import { unitsBeside } from '../words/in-units.js';
import type { Mapped } from './mapped.js';
import { once } from './once.js';

/** Stresses [MPa] between which curves are drawn, at round numbers of each unit; without a line there is no range, and nothing to draw. */
const STRESSES = [500, 3000];

/** So close ends of two curves above the map leave no room for the numbers of both [% of the width]. */
const BESIDE = 14;

/** Force [N] of a line of a diameter [mm] that breaks at a stress [MPa]: F = σ · π d² / 4, and 1 MPa is 1 N/mm². */
const forceAt = (stress: number, diameter: number) => (stress * Math.PI * diameter ** 2) / 4;

/** Diameter [mm] at which a line of a stress [MPa] breaks at a force [N]. */
const diameterAt = (stress: number, force: number) => Math.sqrt((4 * force) / (Math.PI * stress));

/** A scale by ratio, on which thin lines stand as far apart as thick ones, between round ends. */
function scaleOf(ends: (number | null)[], range: [number, number]) {
  const known = ends.filter((end) => end !== null);
  const [least, most] = [Math.min(...known), Math.max(...known)];
  const [from = least, to = most] = scaleLinear().domain([least, most]).nice(10).domain();
  return scaleLog([from > 0 ? from : least, to], range);
}

/** A map of lines but for what it marks, from 0 to 100 both ways: made once for all the pages that show it. */
export const mapDrawing = once((lines: readonly Mapped[]) => {
  const x = scaleOf(
    lines.flatMap(({ diameter, claimedDiameter }) => [diameter.low, diameter.value, diameter.high, claimedDiameter]),
    [0, 100],
  );
  const y = scaleOf(
    lines.flatMap(({ force, claimedForce }) => [force.low, force.value, force.high, claimedForce]),
    [100, 0],
  );
  const [thinnest = 1, thickest = 1] = x.domain();
  const [weakest = 1, strongest = 1] = y.domain();
  // By ratio a parabola is a straight line.
  const curveOf = (stress: number) => {
    const [comes, leaves] = [Math.max(thinnest, diameterAt(stress, weakest)), Math.min(thickest, diameterAt(stress, strongest))];
    const at = (diameter: number) => `${x(diameter).toFixed(2)} ${y(forceAt(stress, diameter)).toFixed(2)}`;
    return { path: `M${at(comes)}L${at(leaves)}`, endX: x(leaves), endY: y(forceAt(stress, leaves)), isOnTop: leaves < thickest };
  };
  const systems = [{ system: 'si', inSi: 1 }, ...unitsBeside('MPa')].map(({ system, inSi }) => {
    const round = scaleLinear()
      .domain(STRESSES.map((end) => end / inSi))
      .ticks(5);
    // One that passes the map above or below is not drawn.
    const crossing = round.filter(
      (stress) => lines.length > 0 && forceAt(stress * inSi, thinnest) < strongest && forceAt(stress * inSi, thickest) > weakest,
    );
    const curves = crossing.map((stress) => ({ words: String(stress), ...curveOf(stress * inSi) }));
    // Of two that end side by side the lower has its number.
    return {
      system,
      curves: curves.map((curve, at) => {
        const lower = curves[at - 1];
        return lower?.isOnTop && Math.abs(curve.endX - lower.endX) < BESIDE ? { ...curve, words: '' } : curve;
      }),
    };
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
