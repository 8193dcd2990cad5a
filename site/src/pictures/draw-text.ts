import type { Font, Glyph } from 'fontkit';
import { readFileSync } from 'node:fs';
import { fromProject } from './from-project.js';

// Letters become outlines, so that the picture is the same on a machine that has no fonts.
const { create } = fromProject('fontkit') as typeof import('fontkit');
const open = (weight: number): Font =>
  create(readFileSync(fromProject.resolve(`@fontsource/source-sans-3/files/source-sans-3-latin-${weight}-normal.woff2`)));
const FONTS = { plain: open(400), strong: open(600) };

/** A line of text as the outlines of its letters. */
export interface DrawnLine {
  /** Elements of SVG. */
  drawing: string;
  width: number;
}

const known = new WeakMap<Glyph, string>();

/** In units of the font; each letter is outlined once. */
function outlineOf(glyph: Glyph): string {
  const outline = known.get(glyph) ?? glyph.path.toSVG();
  known.set(glyph, outline);
  return outline;
}

/** Draws a line of text with its base line at the height y; cut with an ellipsis where it would be wider than there is room. */
export function drawText(text: string, weight: keyof typeof FONTS, size: number, x: number, y: number, room: number): DrawnLine {
  const font = FONTS[weight];
  const scale = size / font.unitsPerEm;
  const { glyphs, positions } = font.layout(text);
  const width = scale * positions.reduce((sum, { xAdvance }) => sum + xAdvance, 0);
  if (width > room && text.length > 1) return drawText(`${text.replace(/.…?$/u, '')}…`, weight, size, x, y, room);
  let left = 0;
  const outlines = glyphs.map((glyph, index) => {
    const outline = `<path transform="translate(${left})" d="${outlineOf(glyph)}"/>`;
    left += positions[index]?.xAdvance ?? 0;
    return outline;
  });
  return { drawing: `<g transform="translate(${x} ${y}) scale(${scale} ${-scale})">${outlines.join('')}</g>`, width };
}
