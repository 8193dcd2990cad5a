import { sha256 } from '../platform/identifiers/identifiers.js';

/** What the order of a draw hangs on: fixed when the edition opened, so that nobody can choose. */
export const seedOf = (blindKeyDigest: string, edition: string): string => sha256(`${blindKeyDigest} ${edition}`);

/**
 * The results that are drawn: those whose SHA-256 of "<seed> <reference>" is smallest. Anybody can draw again with any program.
 * @param percent share of the references, at least one [%]
 */
export function drawFrom(references: readonly string[], seed: string, percent: number): string[] {
  const count = Math.max(1, Math.ceil((references.length * percent) / 100));
  return references
    .map((reference) => ({ reference, mark: sha256(`${seed} ${reference}`) }))
    .sort((one, other) => (one.mark < other.mark ? -1 : 1))
    .slice(0, count)
    .map(({ reference }) => reference);
}
