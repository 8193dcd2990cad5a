import { say } from './say.js';
/** From each of these [N] to the next; ever wider, as lines are sold. */
const EDGES = [0, 25, 50, 75, 100, 150, 200, 300, 500, 1000];

/** The class of a rated strength, by its lower end: 92 N → `75`. @param force [N] as text; null for none */
export function strengthClass(force: string | null): string | null {
  if (force === null) return null;
  return String(EDGES.findLast((edge) => edge <= Number(force)) ?? 0);
}

/** `75` → `75 to 100 N`. */
export function strengthClassWords(from: string): string {
  const next = EDGES[EDGES.indexOf(Number(from)) + 1];
  return next === undefined ? say`${from} N and more` : say`${from} to ${next} N`;
}
