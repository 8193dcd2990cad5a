import { createCanvas, GlobalFonts } from '@napi-rs/canvas';
import { mkdirSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { parentPort, workerData } from 'node:worker_threads';
import { crc32, deflateSync } from 'node:zlib';
import type { Picture, PICTURE } from './picture.js';

const { folder, size } = workerData as { folder: string; size: typeof PICTURE };
const { width, height } = size;

// The site's own face, so that the picture is the same on a machine that has no fonts.
const { resolve } = createRequire(import.meta.url);
const FACES = { plain: 400, strong: 600 };
for (const [face, weight] of Object.entries(FACES))
  GlobalFonts.registerFromPath(resolve(`@fontsource/source-sans-3/files/source-sans-3-latin-${weight}-normal.woff2`), face);

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
const pen = createCanvas(width, LINE).getContext('2d');
const drawn = new Map<string, DrawnWord>();

function wordOf(word: string, font: string): DrawnWord {
  const key = `${font} ${word}`;
  const known = drawn.get(key);
  if (known) return known;
  pen.clearRect(0, 0, width, LINE);
  pen.font = font;
  pen.fillText(word, 1, BASE);
  const advance = pen.measureText(word).width;
  const w = Math.min(width, Math.ceil(advance) + 3);
  const { data } = pen.getImageData(0, 0, w, LINE);
  const shadeAt = (index: number) => (data[4 * index + 3] ?? 0) >> 2;
  const dark = Array.from({ length: w * LINE }, (_, index) => index).filter((index) => shadeAt(index) > 0);
  const at = Int32Array.from(dark, (index) => (Math.floor(index / w) - BASE) * ROW + (index % w));
  const made = { at, shades: Uint8Array.from(dark, shadeAt), advance };
  drawn.set(key, made);
  return made;
}

/** Words and blanks, digits one by one: these are the pieces that come again in other pictures. */
const wordsOf = (line: string, font: string): DrawnWord[] => (line.match(/\d|[^\d\s]+|\s/g) ?? []).map((word) => wordOf(word, font));
const widthOf = (line: string, font: string): number => wordsOf(line, font).reduce((sum, { advance }) => sum + advance, 0);

/** Writes a line with its base line at y; cut with an ellipsis where it would be wider than there is room. */
function write(line: string, font: string, y: number, ink: number, from = MARGIN, room = ROOM): void {
  if (widthOf(line, font) > room && line.length > 1) {
    write(`${line.replace(/.…?$/u, '')}…`, font, y, ink, from, room);
    return;
  }
  let x = from;
  for (const { at, shades, advance } of wordsOf(line, font)) {
    const start = y * ROW + Math.round(x);
    for (let dot = 0; dot < at.length; dot++) pixels[start + (at[dot] ?? 0)] = ink + (shades[dot] ?? 0);
    x += advance;
  }
}

/** As large as there is room for, down to a size at which it is cut instead. */
function writeTitle(title: string): void {
  const sizes = [68, 62, 56, 50, 46].map((px) => `${px}px strong`);
  write(title, sizes.find((font) => widthOf(title, font) <= ROOM) ?? '46px strong', 222, INK);
}

function drawSpan({ low, place, high, of }: NonNullable<Picture['span']>): void {
  const at = (one: number) => MARGIN + Math.round(((one - 1) / Math.max(1, of - 1)) * ROOM);
  fill(MARGIN, 488, ROOM, 4, RULE);
  fill(at(low), 478, Math.max(2, at(high) - at(low)), 24, ACCENT_SOFT);
  fill(at(place) - 4, 466, 8, 48, ACCENT);
}

const ROW_FONT = '29px plain';
const [ROW_TOP, ROW_STEP, NAME_ROOM, VALUE_END, BAR_START] = [366, 48, 600, 850, 880];

function drawRow({ name, value, low, dot, high }: Picture['rows'][number], index: number): void {
  const y = ROW_TOP + ROW_STEP * index;
  write(name, ROW_FONT, y, INK, MARGIN, NAME_ROOM);
  write(value, '32px strong', y, INK, VALUE_END - widthOf(value, '32px strong'));
  const at = (percent: number) => BAR_START + Math.round(((width - MARGIN - BAR_START) * percent) / 100);
  fill(BAR_START, y - 12, width - MARGIN - BAR_START, 2, RULE);
  if (low !== null && high !== null) fill(at(low), y - 17, Math.max(2, at(high) - at(low)), 12, ACCENT_SOFT);
  fill(at(dot) - 3, y - 23, 6, 24, ACCENT);
}

/** The picture as PNG. */
function draw({ house, title, lines, rows, mark, span }: Picture): Buffer {
  pixels.fill(0);
  fill(MARGIN, 134, ROOM, 3, RULE);
  writeTitle(title);
  write(house, '34px plain', 110, SOFT);
  for (const [index, line] of lines.entries()) write(line, '38px plain', 296 + 58 * index, SOFT);
  rows.forEach(drawRow);
  if (mark !== '') write(mark, '26px plain', height - 24, SOFT);
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
parentPort?.on('message', (picture: Picture | null) => {
  if (!picture) return parentPort?.close();
  const file = join(folder, picture.address);
  try {
    if (!folders.has(dirname(file))) mkdirSync(dirname(file), { recursive: true });
    folders.add(dirname(file));
    writeFileSync(file, draw(picture));
  } catch (error) {
    // A page without its picture is still a page.
    process.stderr.write(`Not drawn: ${picture.address}. ${String(error)}\n`);
  }
});
