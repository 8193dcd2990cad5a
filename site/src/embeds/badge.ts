import { say } from '../words/say.js';
import type { EditionDocument, VariantName } from '../../../api/contract/documents/release-documents.js';
import { lineName } from '../../../api/contract/line-name.js';
import { escapeXml } from '../words/escape-xml.js';
import { exclusionWords } from '../words/exclusion-words.js';
import { figures } from '../words/figures.js';
import { formatDate } from '../words/format-date.js';
import { placesAllowed } from '../words/group-words.js';

export const BADGE = { width: 320, height: 124 };
const INSIDE = BADGE.width - 24;
/** Of a wide letter over the size of the face: nobody knows the face. */
const LETTER = 0.6;

interface Badge {
  readonly edition: EditionDocument;
  /** Slug of an entry. */
  readonly variant: string;
  /** Revision that took the place of this one; null while it is the current. */
  readonly replacedBy: number | null;
}

/** What a badge says, line by line: which line, which of its variants, which place, how sure, in what, of which revision, by whom. */
export function badgeLines({ edition, variant, replacedBy }: Badge): string[] {
  const where = edition.division ? `${edition.division.name}, ${edition.edition.name}` : edition.edition.name;
  const revision = say`Revision ${edition.revision}, ${formatDate(edition.publishedAt)}`;
  const isIt = (one: { variant: VariantName }) => one.variant.slug === variant;
  const entry = edition.overall.find(isIt) ?? edition.incomplete.find(isIt) ?? edition.excluded.find(isIt);
  return [
    ...(entry ? nameLines(entry.variant) : [variant, '']),
    ...placeLines(edition, variant),
    where,
    replacedBy === null ? revision : say`${revision}; replaced by revision ${replacedBy}`,
    edition.isDemo ? say`${edition.house}: invented figures` : edition.house,
  ];
}

const nameLines = ({ maker, line, size, colour }: VariantName): [string, string] => [lineName(maker, line), figures(`${size}, ${colour}`)];

function placeLines({ overall, excluded }: EditionDocument, variant: string): [string, string] {
  const row = overall.find((one) => one.variant.slug === variant);
  if (row && row.place !== null) {
    const placed = overall.filter(({ place }) => place !== null).length;
    const allowed = row.placeInterval
      ? say`The evidence allows place ${placesAllowed(row.placeInterval)}`
      : say`How sure that is was not stated`;
    return [say`Place ${row.place} of ${placed}${row.isTied ? say`, shared` : ''}`, allowed];
  }
  const exclusion = excluded.find((one) => one.variant.slug === variant);
  return [say`Not placed`, exclusion ? (exclusionWords[exclusion.reasonCode] ?? say`Left out`) : say`Incomplete`];
}

const INK = '#1a2026';
const SOFT = '#4c555c';
/** Of each line: where it stands [px], the size of its face [px], its weight, its colour. */
const LINES = [
  [21, 15, 600, INK],
  [37, 12, 400, SOFT],
  [57, 16, 600, '#0b4a6f'],
  [73, 12, 400, INK],
  [88, 12, 400, INK],
  [103, 11, 400, SOFT],
  [117, 11, 400, SOFT],
] as const;

/** A badge of a variant: a picture without script or outside parts, light on any page (SVG 1.1). */
export function badgeOf(badge: Badge): string {
  const lines = badgeLines(badge);
  const { width, height } = BADGE;
  const texts = LINES.map(([y, size, weight, colour], index) => {
    const text = lines[index] ?? '';
    // A line that could be wider than the badge is set smaller.
    const fitting = Math.min(size, Math.floor((10 * INSIDE) / (text.length * LETTER)) / 10);
    return `<text x="12" y="${y}" font-size="${fitting}" font-weight="${weight}" fill="${colour}">${escapeXml(text)}</text>`;
  });
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" role="img" font-family="system-ui, sans-serif">`,
    `<title>${escapeXml(lines.join('. '))}</title>`,
    `<rect x="0.5" y="0.5" width="${width - 1}" height="${height - 1}" fill="#fbfaf6" stroke="#d5d1c6"/>`,
    ...texts,
    '</svg>\n',
  ].join('');
}
