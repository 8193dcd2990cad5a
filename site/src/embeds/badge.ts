import type { EditionDocument, VariantName } from '../../../api/contract/documents/release-documents.js';
import { escapeXml } from '../words/escape-xml.js';
import { exclusionWords } from '../words/exclusion-words.js';
import { formatDate } from '../words/format-date.js';
import { placesAllowed } from '../words/group-words.js';
import { fullName } from '../words/variant-words.js';

export const BADGE = { width: 320, height: 108 };
const INSIDE = BADGE.width - 24;
/** Of an ordinary letter over the size of the face. */
const LETTER = 0.55;

interface Badge {
  readonly edition: EditionDocument;
  /** Slug of an entry. */
  readonly variant: string;
  /** Revision that took the place of this one; null while it is the current. */
  readonly replacedBy: number | null;
}

/** What a badge says, line by line: who, which place, how sure, in what, of which revision, by whom. */
export function badgeLines({ edition, variant, replacedBy }: Badge): string[] {
  const where = edition.division ? `${edition.division.name}, ${edition.edition.name}` : edition.edition.name;
  const revision = `Revision ${edition.revision}, ${formatDate(edition.publishedAt)}`;
  const isIt = (one: { variant: VariantName }) => one.variant.slug === variant;
  const entry = edition.overall.find(isIt) ?? edition.incomplete.find(isIt) ?? edition.excluded.find(isIt);
  return [
    entry ? fullName(entry.variant) : variant,
    ...placeLines(edition, variant),
    where,
    replacedBy === null ? revision : `${revision}; replaced by revision ${replacedBy}`,
    edition.isDemo ? `${edition.house}: invented figures` : edition.house,
  ];
}

function placeLines({ overall, excluded }: EditionDocument, variant: string): [string, string] {
  const row = overall.find((one) => one.variant.slug === variant);
  if (row && row.place !== null) {
    const placed = overall.filter(({ place }) => place !== null).length;
    const allowed = row.placeInterval ? `The evidence allows place ${placesAllowed(row.placeInterval)}` : 'How sure that is was not stated';
    return [`Place ${row.place}${row.isTied ? ', shared,' : ''} of ${placed}`, allowed];
  }
  const exclusion = excluded.find((one) => one.variant.slug === variant);
  return ['Not placed', exclusion ? (exclusionWords[exclusion.reasonCode] ?? 'Left out') : 'Incomplete'];
}

/** A line that would be wider than the badge is set closer. */
const lineOf = (text: string, y: number, size: number, weight: number, colour: string): string => {
  const close = text.length * size * LETTER > INSIDE ? ` textLength="${INSIDE}" lengthAdjust="spacingAndGlyphs"` : '';
  return `<text x="12" y="${y}" font-size="${size}" font-weight="${weight}" fill="${colour}"${close}>${escapeXml(text)}</text>`;
};

const INK = '#1a2026';
const SOFT = '#4c555c';

/** A badge of a variant: a picture without script or outside parts, light on any page (SVG 1.1). */
export function badgeOf(badge: Badge): string {
  const lines = badgeLines(badge);
  const [name = '', place = '', allowed = '', where = '', revision = '', house = ''] = lines;
  const { width, height } = BADGE;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" role="img" font-family="system-ui, sans-serif">`,
    `<title>${escapeXml(lines.join('. '))}</title>`,
    `<rect x="0.5" y="0.5" width="${width - 1}" height="${height - 1}" fill="#fbfaf6" stroke="#d5d1c6"/>`,
    lineOf(name, 20, 13, 600, INK),
    lineOf(place, 39, 15, 600, '#0b4a6f'),
    lineOf(allowed, 55, 12, 400, INK),
    lineOf(where, 70, 12, 400, INK),
    lineOf(revision, 86, 11, 400, SOFT),
    lineOf(house, 100, 11, 400, SOFT),
    '</svg>\n',
  ].join('');
}
