import { createHash } from 'node:crypto';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { drawText } from './draw-text.js';
import { fromProject } from './from-project.js';

const sharp = fromProject('sharp') as typeof import('sharp').default;

/** The words of a picture, and the span of places that is drawn below them. */
export interface PictureWords {
  house: string;
  title: string;
  lines: string[];
  isDemo: boolean;
  span: { low: number; place: number; high: number; of: number } | null;
}

// Drawn at half of this: large enough to be shown large, and a quarter of the work where there are ten thousand.
const [WIDTH, HEIGHT, MARGIN] = [1200, 630, 80];
const ROOM = WIDTH - 2 * MARGIN;
const INK = { paper: '#fbfaf6', ink: '#1a2026', soft: '#4c555c', rule: '#d5d1c6', accent: '#0b4a6f', accentSoft: '#8fb0c4' };

function drawing({ house, title, lines, isDemo, span }: PictureWords): string {
  const soft = [
    drawText(house, 'plain', 34, MARGIN, 110, ROOM),
    ...lines.map((line, index) => drawText(line, 'plain', 42, MARGIN, 300 + 62 * index, ROOM)),
    ...(isDemo ? [drawText('Invented figures for demonstration', 'plain', 28, MARGIN, HEIGHT - 56, ROOM)] : []),
  ].map((line) => line.drawing);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH / 2}" height="${HEIGHT / 2}" viewBox="0 0 ${WIDTH} ${HEIGHT}">`,
    `<path d="M0 0H${WIDTH}V${HEIGHT}H0z" fill="${INK.paper}"/>`,
    `<path d="M${MARGIN} 136H${WIDTH - MARGIN}" stroke="${INK.rule}" stroke-width="3"/>`,
    `<g fill="${INK.ink}">${titleOf(title)}</g>`,
    `<g fill="${INK.soft}">${soft.join('')}</g>`,
    ...(span ? [spanDrawing(span)] : []),
    '</svg>',
  ].join('');
}

/** As large as there is room for, down to a size at which it is cut instead. */
function titleOf(title: string): string {
  const { width } = drawText(title, 'strong', 68, MARGIN, 222, Infinity);
  return drawText(title, 'strong', Math.max(46, Math.min(68, (68 * ROOM) / width)), MARGIN, 222, ROOM + 1).drawing;
}

function spanDrawing({ low, place, high, of }: NonNullable<PictureWords['span']>): string {
  const at = (one: number) => (MARGIN + ((one - 1) / Math.max(1, of - 1)) * ROOM).toFixed(1);
  const y = 490;
  return [
    `<path d="M${MARGIN} ${y}H${WIDTH - MARGIN}" stroke="${INK.rule}" stroke-width="3"/>`,
    `<path d="M${at(low)} ${y}H${at(high + 0.01)}" stroke="${INK.accentSoft}" stroke-width="22"/>`,
    `<circle cx="${at(place)}" cy="${y}" r="12" fill="${INK.accent}"/>`,
  ].join('');
}

/** The picture as PNG; kept beside the build's cache by the digest of its words, so that a later build draws only what is new. */
export async function socialPicture(words: PictureWords): Promise<Uint8Array<ArrayBuffer>> {
  const folder = process.env['SITE_CACHE'] && join(process.env['SITE_CACHE'], 'pictures');
  const kept = folder && join(folder, `${createHash('sha256').update(JSON.stringify(words)).digest('hex')}.png`);
  const known = kept && (await readFile(kept).catch(() => null));
  if (known) return new Uint8Array(known);
  const drawn = await sharp(Buffer.from(drawing(words)))
    .png({ compressionLevel: 6 })
    .toBuffer();
  if (folder && kept) {
    await mkdir(folder, { recursive: true });
    await writeFile(kept, drawn);
  }
  return new Uint8Array(drawn);
}
