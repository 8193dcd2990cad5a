import { rectifyConfusion } from 'unicode-confusables';

/**
 * What is left of a name when every character gives way to the one that it is mistaken for, whatever its script.
 * @see Unicode Technical Standard 39, section 4, skeleton
 */
const skeletonOf = (name: string): string => rectifyConfusion(name.normalize('NFD')).normalize('NFD').toLowerCase();

/** As written and in small letters, for a capital may look like another one whose small letter does not. */
const looksOf = (name: string): string[] => [skeletonOf(name), skeletonOf(name.toLowerCase())];

/** The name among those on record that a reader would take a new one for, though it is written otherwise; undefined where there is none. */
export function lookalikeOf(name: string, onRecord: readonly string[]): string | undefined {
  const looks = looksOf(name);
  return onRecord.find((other) => other !== name && looksOf(other).some((look, index) => look === looks[index]));
}
