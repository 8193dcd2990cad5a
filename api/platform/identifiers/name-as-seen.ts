import unhomoglyph from 'unhomoglyph';

/**
 * What is seen of a name: two that cannot be told apart by eye give the same (skeletons of Unicode Technical Standard 39, without regard to capitals).
 * @param displayName as it is shown
 */
export const nameAsSeen = (displayName: string): string =>
  unhomoglyph(unhomoglyph(displayName.normalize('NFD')).toLowerCase()).normalize('NFC');

/** The name among those on record that a reader would take a new one for, though it is written otherwise; undefined where there is none. */
export function lookalikeOf(name: string, onRecord: readonly string[]): string | undefined {
  const seen = nameAsSeen(name);
  return onRecord.find((other) => other !== name && nameAsSeen(other) === seen);
}
