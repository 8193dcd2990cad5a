import unhomoglyph from 'unhomoglyph';

/**
 * What is seen of a name: two that cannot be told apart by eye give the same (skeletons of Unicode Technical Standard 39, without regard to capitals).
 * @param displayName as it is shown
 */
export const nameAsSeen = (displayName: string): string =>
  unhomoglyph(unhomoglyph(displayName.normalize('NFD')).toLowerCase()).normalize('NFC');
