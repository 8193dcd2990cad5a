import { create } from 'fontkitten';
import type { Font } from 'fontkitten';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { parentPort, workerData } from 'node:worker_threads';
import { crc32, deflateSync } from 'node:zlib';
import sharp from 'sharp';
import type { Picture, PICTURE } from './picture.js';

const { folder, size } = workerData as { folder: string; size: typeof PICTURE };
const { width, height } = size;

// The site's own face, so that the picture is the same on a machine that has no fonts; what the Latin part lacks comes from the others.
const { resolve } = createRequire(import.meta.url);
const PARTS = ['latin', 'latin-ext', 'greek', 'cyrillic'];
const faceOf = (weight: number): Font[] =>
  PARTS.map(
    (part) => create(readFileSync(resolve(`@fontsource/source-sans-3/files/source-sans-3-${part}-${weight}-normal.woff2`))) as Font,
  );
const FACES = { plain: faceOf(400), strong: faceOf(600) };
type Face = Readonly<{ face: keyof typeof FACES; px: number }>;
const plain = (px: number): Face => ({ face: 'plain', px });
const strong = (px: number): Face => ({ face: 'strong', px });

const MARGIN = 80;
const ROOM = width - 2 * MARGIN;

// A picture is a few colours on paper, so that ten thousand of them take seconds: each pixel is the number of a colour.
type Colour = readonly [red: number, green: number, blue: number];
const PAPER: Colour = [0xfb, 0xfa, 0xf6];
const SHADES = 64;
const shadesOf = (ink: Colour): Colour[] =>
  Array.from({ length: SHADES }, (_, shade) => {
    const at = (channel: 0 | 1 | 2) => Math.round(PAPER[channel] + ((ink[channel] - PAPER[channel]) * shade) / (SHADES - 1));
    return [at(0), at(1), at(2)];
  });
const PALETTE: Colour[] = [
  ...shadesOf([0x1a, 0x20, 0x26]),
  ...shadesOf([0x4c, 0x55, 0x5c]),
  [0xd5, 0xd1, 0xc6],
  [0x8f, 0xb0, 0xc4],
  [0x0b, 0x4a, 0x6f],
];
const [INK, SOFT, RULE, ACCENT_SOFT, ACCENT] = [0, SHADES, 2 * SHADES, 2 * SHADES + 1, 2 * SHADES + 2];

// A row begins with the number of its filter, which is none.
const ROW = width + 1;
const pixels = new Uint8Array(ROW * height);

function fill(x: number, y: number, w: number, h: number, colour: number): void {
  for (let row = y; row < y + h; row++) pixels.fill(colour, row * ROW + 1 + x, row * ROW + 1 + x + w);
}

/** A word as drawn: where from its left and its base line it is dark, and how dark; and how far the next word is. */
interface DrawnWord {
  readonly at: Int32Array;
  readonly shades: Uint8Array;
  readonly advance: number;
}

const LINE = 96;
const BASE = 72;
const drawn = new Map<string, DrawnWord>();

const letters = new Map<string, { readonly path: string; readonly scale: number; readonly advance: number }>();

/** A letter from the first part of the face that has it: its outline, and where the next one begins. */
function letterOf(letter: string, { face, px }: Face) {
  const key = `${face} ${px} ${letter}`;
  const known = letters.get(key);
  if (known) return known;
  const font = FACES[face].find((part) => part.hasGlyphForCodePoint(letter.codePointAt(0) ?? 0)) ?? FACES[face][0];
  const [glyph] = font?.glyphsForString(letter) ?? [];
  const scale = px / (font?.unitsPerEm ?? px);
  const made = { path: glyph?.path.toSVG() ?? '', scale, advance: (glyph?.advanceWidth ?? 0) * scale };
  letters.set(key, made);
  return made;
}

const widthOf = (line: string, font: Face): number => Array.from(line).reduce((sum, letter) => sum + letterOf(letter, font).advance, 0);

async function wordOf(word: string, font: Face): Promise<DrawnWord> {
  const key = `${font.face} ${font.px} ${word}`;
  const known = drawn.get(key);
  if (known) return known;
  let x = 1;
  const paths = Array.from(word, (letter) => {
    const { path, scale, advance } = letterOf(letter, font);
    x += advance;
    return `<path transform="translate(${x - advance} ${BASE}) scale(${scale} ${-scale})" d="${path}"/>`;
  });
  const w = Math.min(width, Math.ceil(x) + 2);
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${w}" height="${LINE}">${paths.join('')}</svg>`;
  const data = await sharp(Buffer.from(svg)).ensureAlpha().extractChannel('alpha').raw().toBuffer();
  const dark = Array.from(data.keys()).filter((index) => (data[index] ?? 0) >> 2 > 0);
  const at = Int32Array.from(dark, (index) => (Math.floor(index / w) - BASE) * ROW + (index % w));
  const made = { at, shades: Uint8Array.from(dark, (index) => (data[index] ?? 0) >> 2), advance: x - 1 };
  drawn.set(key, made);
  return made;
}

/** Words and blanks, digits one by one: these are the pieces that come again in other pictures. */
const piecesOf = (line: string): string[] => line.match(/\d|[^\d\s]+|\s/g) ?? [];

/** Writes a line with its base line at y; cut with an ellipsis where it would be wider than there is room. */
async function write(line: string, font: Face, y: number, ink: number, from = MARGIN, room = ROOM): Promise<void> {
  if (widthOf(line, font) > room && line.length > 1) return write(`${line.replace(/.…?$/u, '')}…`, font, y, ink, from, room);
  let x = from;
  for (const word of piecesOf(line)) {
    const { at, shades, advance } = await wordOf(word, font);
    const start = y * ROW + Math.round(x);
    for (let dot = 0; dot < at.length; dot++) pixels[start + (at[dot] ?? 0)] = ink + (shades[dot] ?? 0);
    x += advance;
  }
}

/** The first of these fonts, largest first, in which every line has room; in the smallest they are cut instead. */
function fitting(lines: readonly string[], [font, ...smaller]: readonly [Face, ...Face[]]): Face {
  const [next, ...rest] = smaller;
  return !next || lines.every((line) => widthOf(line, font) <= ROOM) ? font : fitting(lines, [next, ...rest]);
}
const TITLE_FONTS = [strong(68), strong(62), strong(56), strong(50), strong(46)] as const;
const LINE_FONTS = [plain(38), plain(34), plain(30)] as const;

function drawSpan({ low, place, high, of }: NonNullable<Picture['span']>): void {
  const at = (one: number) => MARGIN + Math.round(((one - 1) / Math.max(1, of - 1)) * ROOM);
  fill(MARGIN, 488, ROOM, 4, RULE);
  fill(at(low), 478, Math.max(2, at(high) - at(low)), 24, ACCENT_SOFT);
  fill(at(place) - 4, 466, 8, 48, ACCENT);
}

const [ROW_FONT, VALUE_FONT] = [plain(29), strong(32)];
const [ROW_TOP, ROW_STEP, NAME_ROOM, VALUE_END, BAR_START] = [366, 48, 600, 850, 880];

async function drawRow({ name, value, low, dot, high }: Picture['rows'][number], index: number): Promise<void> {
  const y = ROW_TOP + ROW_STEP * index;
  await write(name, ROW_FONT, y, INK, MARGIN, NAME_ROOM);
  await write(value, VALUE_FONT, y, INK, VALUE_END - widthOf(value, VALUE_FONT));
  const at = (percent: number) => BAR_START + Math.round(((width - MARGIN - BAR_START) * percent) / 100);
  fill(BAR_START, y - 12, width - MARGIN - BAR_START, 2, RULE);
  if (low !== null && high !== null) fill(at(low), y - 17, Math.max(2, at(high) - at(low)), 12, ACCENT_SOFT);
  fill(at(dot) - 3, y - 23, 6, 24, ACCENT);
}

/** The picture as PNG. */
async function draw({ house, title, lines, rows, mark, span }: Picture): Promise<Buffer> {
  pixels.fill(0);
  fill(MARGIN, 134, ROOM, 3, RULE);
  await write(title, fitting([title], TITLE_FONTS), 222, INK);
  await write(house, plain(34), 110, SOFT);
  const font = fitting(lines, LINE_FONTS);
  for (const [index, line] of lines.entries()) await write(line, font, 296 + 58 * index, SOFT);
  for (const [index, row] of rows.entries()) await drawRow(row, index);
  if (mark !== '') await write(mark, plain(26), height - 24, SOFT);
  if (span) drawSpan(span);
  return asPng();
}

/** @see ISO/IEC 15948 (PNG), 11.2: IHDR, PLTE, IDAT, IEND; a pixel is a byte, the number of its colour */
function asPng(): Buffer {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, 3, 0, 0, 0], 8);
  return Buffer.concat([
    Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'),
    chunk('IHDR', header),
    chunk('PLTE', Buffer.from(PALETTE.flat())),
    chunk('IDAT', deflateSync(pixels, { level: 3 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(type: string, data: Buffer): Buffer {
  const typed = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  check.writeUInt32BE(crc32(typed));
  return Buffer.concat([length, typed, check]);
}

const folders = new Set<string>();
async function save(picture: Picture): Promise<void> {
  const file = join(folder, picture.address);
  try {
    if (!folders.has(dirname(file))) mkdirSync(dirname(file), { recursive: true });
    folders.add(dirname(file));
    writeFileSync(file, await draw(picture));
  } catch (error) {
    // A page without its picture is still a page.
    process.stderr.write(`Not drawn: ${picture.address}. ${String(error)}\n`);
  }
}

// One after the other: all of them are drawn on the same pixels.
let last = Promise.resolve();
parentPort?.on('message', (picture: Picture | null) => {
  last = last.then(() => (picture ? save(picture) : parentPort?.close()));
});
