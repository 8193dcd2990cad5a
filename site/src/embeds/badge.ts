import type { EditionDocument, OverallRow } from '../../../api/contract/documents/release-documents.js';
import { escapeXml } from '../words/escape-xml.js';
import { formatDate } from '../words/format-date.js';
import { placesAllowed } from '../words/group-words.js';

const WIDTH = 320;
const HEIGHT = 92;
const INSIDE = WIDTH - 24;
/** Of an ordinary letter over the size of the face. */
const LETTER = 0.58;

interface Badge {
  readonly edition: EditionDocument;
  readonly row: OverallRow;
  /** Revision that took the place of this one; null while it is the current. */
  readonly replacedBy: number | null;
}

/** What a badge says, line by line: who, which place, how sure, of which release. */
export function badgeLines({ edition, row, replacedBy }: Badge): string[] {
  const { variant, place, placeInterval, isTied } = row;
  const placed = edition.overall.filter((one) => one.place !== null).length;
  const where = edition.division ? `${edition.division.name}, ${edition.edition.name}` : edition.edition.name;
  const standing = place === null ? 'Not placed' : `Place ${place}${isTied ? ' (shared)' : ''} of ${placed}`;
  const allowed = placeInterval && place !== null ? `; the evidence allows ${placesAllowed(placeInterval)}` : '';
  const origin = edition.isDemo ? `${edition.house}: invented, for demonstration` : edition.house;
  const revision = `Revision ${edition.revision}, ${formatDate(edition.publishedAt)}`;
  return [
    `${variant.maker.name} ${variant.line.name} ${variant.size}`,
    standing + allowed,
    where,
    replacedBy === null ? revision : `${revision}; replaced by revision ${replacedBy}`,
    origin,
  ];
}

/** A line that would be wider than the badge is set closer. */
const lineOf = (text: string, y: number, size: number, weight: number, colour: string): string => {
  const close = text.length * size * LETTER > INSIDE ? ` textLength="${INSIDE}" lengthAdjust="spacingAndGlyphs"` : '';
  return `<text x="12" y="${y}" font-size="${size}" font-weight="${weight}" fill="${colour}"${close}>${escapeXml(text)}</text>`;
};

/** A badge of a variant: a picture without script or outside parts, light on any page (SVG 1.1). */
export function badgeOf(badge: Badge): string {
  const lines = badgeLines(badge);
  const [name = '', standing = '', where = '', revision = '', origin = ''] = lines;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${HEIGHT}" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" font-family="system-ui, sans-serif">`,
    `<title>${escapeXml(lines.join('. '))}</title>`,
    `<rect x="0.5" y="0.5" width="${WIDTH - 1}" height="${HEIGHT - 1}" fill="#fbfaf6" stroke="#d5d1c6"/>`,
    lineOf(name, 20, 14, 600, '#1a2026'),
    lineOf(standing, 38, 13, 600, '#0b4a6f'),
    lineOf(where, 54, 12, 400, '#1a2026'),
    lineOf(revision, 69, 11, 400, '#4c555c'),
    lineOf(origin, 84, 11, 400, '#4c555c'),
    '</svg>\n',
  ].join('');
}
