import type { Font } from 'fontkit';
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

const known = new Map<string, DrawnLine>();

/** A line in units of the font, its base line at 0; laid out once, for most lines stand on every picture of an edition. */
function layOut(text: string, weight: keyof typeof FONTS): DrawnLine {
  const key = `${weight} ${text}`;
  const found = known.get(key);
  if (found) return found;
  const { glyphs, positions } = FONTS[weight].layout(text);
  let width = 0;
  const outlines = glyphs.map((glyph, index) => {
    const outline = glyph.path.translate(width, 0).toSVG();
    width += positions[index]?.xAdvance ?? 0;
    return outline;
  });
  // One path a line: a path a letter takes twice the time to draw.
  const line = { drawing: `<path d="${outlines.join('')}"/>`, width };
  known.set(key, line);
  return line;
}

/** Draws a line of text with its base line at the height y; cut with an ellipsis where it would be wider than there is room. */
export function drawText(text: string, weight: keyof typeof FONTS, size: number, x: number, y: number, room: number): DrawnLine {
  const scale = size / FONTS[weight].unitsPerEm;
  const { drawing, width } = layOut(text, weight);
  if (scale * width > room && text.length > 1) return drawText(`${text.replace(/.…?$/u, '')}…`, weight, size, x, y, room);
  return { drawing: `<g transform="translate(${x} ${y}) scale(${scale} ${-scale})">${drawing}</g>`, width: scale * width };
}
