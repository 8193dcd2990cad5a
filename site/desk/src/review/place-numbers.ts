/** Where the numbers of marks stand in a plot. Pure. */

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Of a digit at the size of the plot's text [px]. */
const DIGIT = { width: 7, height: 12 };
/** From the middle of a mark to the middle of its number [px]. */
const AWAY = 14;
/** Above first, as people look for it there. */
const AROUND: readonly Spot[] = [
  { x: 0, y: -1 },
  { x: 0, y: 1 },
  { x: 1, y: 0 },
  { x: -1, y: 0 },
  { x: 0.8, y: -0.8 },
  { x: -0.8, y: -0.8 },
  { x: 0.8, y: 0.8 },
  { x: -0.8, y: 0.8 },
];

/**
 * The middle of each number, beside its mark and clear of every number that has its place; null where the marks are so many that none is left.
 * Places that cover no other mark are taken first.
 */
export function placeNumbers(marks: readonly (Spot & { readonly number: number })[], radius: number): readonly (Spot | null)[] {
  const placed: (Spot & { readonly number: number })[] = [];
  return marks.map(({ number, ...mark }) => {
    const spots = AROUND.map(({ x, y }) => ({ x: mark.x + AWAY * x, y: mark.y + AWAY * y, number }));
    const free = spots.filter((spot) => placed.every((other) => !touch(spot, other)));
    const spot = free.find((one) => marks.every((other) => !covers(one, other, radius))) ?? free[0];
    if (!spot) return null;
    placed.push(spot);
    return { x: spot.x, y: spot.y };
  });
}

const widthOf = (number: number): number => DIGIT.width * String(number).length;

const touch = (one: Spot & { number: number }, other: Spot & { number: number }): boolean =>
  Math.abs(one.x - other.x) < (widthOf(one.number) + widthOf(other.number)) / 2 && Math.abs(one.y - other.y) < DIGIT.height;

const covers = (spot: Spot & { number: number }, mark: Spot, radius: number): boolean =>
  Math.abs(spot.x - mark.x) < widthOf(spot.number) / 2 + radius && Math.abs(spot.y - mark.y) < DIGIT.height / 2 + radius;
